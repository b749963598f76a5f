package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.browserless.ViewPackages;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.Background;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;

/** An edit of a field is saved at once, and what follows from it does not hold the page up. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:fieldedits")
@Import(FieldEditsTests.Later.class)
@ViewPackages(classes = BoatView.class)
class FieldEditsTests extends SpringBrowserlessTest {

    private static final Deque<Runnable> WAITING = new ArrayDeque<>();

    @TestConfiguration
    static class Later {
        @Bean
        @Primary
        Background later() {
            return WAITING::add;
        }
    }

    @Autowired
    ShortlistEditing editing;

    private ShortlistId list;
    private CandidateId boat;

    @BeforeEach
    void opensTheFacts() {
        WAITING.clear();
        list = editing.create(ShortlistData.named("Spring"), "Dana").id();
        boat = editing.add(list, CandidateData.of("Green boat", BoatKind.PEDAL_KAYAK), "Dana")
                .id();
        UI.getCurrent().navigate(Places.boat(list, boat, "facts"));
    }

    private <C extends Component> C byId(Class<C> type, String testId) {
        return BoatPageTests.all(UI.getCurrent())
                .filter(type::isInstance)
                .map(type::cast)
                .filter(each -> testId.equals(each.getTestId()))
                .findFirst()
                .orElseThrow();
    }

    private String masses() {
        return byId(Component.class, "facts-masses").getElement().getTextRecursively();
    }

    private void hull(String typed) {
        test(byId(TextField.class, "field-boat.bareMassKg")).setValue(typed);
    }

    private CandidateData kept() {
        return editing.facts(list).orElseThrow().candidate(boat).orElseThrow().data();
    }

    private void workOut() {
        while (!WAITING.isEmpty()) {
            WAITING.remove().run();
        }
        BoatPageTests.settle();
    }

    @Test
    void savesAtOnceAndShowsWhatFollowsWhenItIsReady() {
        String before = masses();

        hull("61 kg");

        assertThat(kept().boat().bareMassKg()).isEqualTo(61);
        assertThat(masses()).isEqualTo(before);
        assertThat(byId(Span.class, "boat-working").isVisible()).isTrue();

        workOut();
        assertThat(masses()).isNotEqualTo(before);
        assertThat(BoatPageTests.all(UI.getCurrent())
                        .filter(each -> "boat-working".equals(each.getTestId()))
                        .noneMatch(Component::isVisible))
                .isTrue();
    }

    @Test
    void showsWhatFollowsFromTheLastOfSeveralEdits() {
        hull("61 kg");
        hull("40 kg");
        workOut();
        String twice = masses();

        hull("61 kg");
        workOut();
        hull("40 kg");
        workOut();

        assertThat(kept().boat().bareMassKg()).isEqualTo(40);
        assertThat(twice).isEqualTo(masses());
    }

    @Test
    void saysAtOnceWhatIsRefused() {
        hull("-5");

        TextField field = byId(TextField.class, "field-boat.bareMassKg");
        assertThat(field.isInvalid()).isTrue();
        assertThat(kept().boat().bareMassKg()).isNull();
        assertThat(WAITING).isEmpty();
    }
}
