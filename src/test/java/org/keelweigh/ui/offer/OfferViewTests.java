package org.keelweigh.ui.offer;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.H2;
import org.junit.jupiter.api.Test;
import org.keelweigh.demo.Example;
import org.keelweigh.demo.Examples;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.chart.OfferCurve;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:offer")
class OfferViewTests extends SpringBrowserlessTest {

    @Autowired
    private Examples examples;

    @Autowired
    private ShortlistEditing editing;

    @Test
    void offersForTheBoatThatLeadsFirstAndForNoneThatIsRuledOut() {
        ShortlistId id = examples.load(Example.COUPLE, "Wren");

        UI.getCurrent().navigate(Places.offer(id));

        assertThat($(H2.class).all().getFirst().getText()).isEqualTo("Grey fin-drive boat");
        assertThat($(OfferCurve.class).all()).hasSize(2);
        assertThat(text()).contains("Open with", "Walk away above", "No offer: this boat is ruled out.");
    }

    @Test
    void teachesWhatToDoWhenThereIsNoBoat() {
        ShortlistId id = editing.create(ShortlistData.named("Empty"), "Wren").id();

        UI.getCurrent().navigate(Places.offer(id));

        assertThat(text()).contains("There is no boat on this shortlist yet.");
    }

    private String text() {
        return $(OfferView.class).single().getElement().getTextRecursively();
    }
}
