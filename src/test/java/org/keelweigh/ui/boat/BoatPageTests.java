package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.browserless.ViewPackages;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.server.VaadinSession;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.AtOnce;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;

/** A boat on a fresh shortlist, and the ways of a person through its page. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:boatpage")
@Import(AtOnce.class)
@ViewPackages(classes = BoatView.class)
abstract class BoatPageTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    ShortlistId list;
    CandidateId boat;

    @BeforeEach
    void begin() {
        list = editing.create(ShortlistData.named("Spring"), "Dana").id();
        boat = editing.add(list, CandidateData.of("Green boat", BoatKind.PEDAL_KAYAK), "Dana")
                .id();
    }

    void open(BoatSection section) {
        UI.getCurrent().navigate(Places.boat(list, boat, section.code()));
    }

    CandidateData kept() {
        return facts().candidate(boat).orElseThrow().data();
    }

    Facts facts() {
        return editing.facts(list).orElseThrow();
    }

    <C extends Component> C byId(Class<C> type, String testId) {
        return all(UI.getCurrent())
                .filter(type::isInstance)
                .map(type::cast)
                .filter(each -> testId.equals(each.getTestId()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("Nothing on the page is called " + testId));
    }

    void tap(String testId) {
        test(byId(NativeButton.class, testId)).click();
        settle();
    }

    TextField type(String field, String text) {
        TextField input = byId(TextField.class, "field-" + field);
        test(input).setValue(text);
        settle();
        return input;
    }

    /** Lets what was worked out in the background be shown: that happens when the page's lock is let go. */
    static void settle() {
        VaadinSession session = VaadinSession.getCurrent();
        session.unlock();
        session.lock();
    }

    String words(String testId) {
        settle();
        return words(byId(Component.class, testId));
    }

    static String words(Component component) {
        return component.getElement().getTextRecursively();
    }

    static Stream<Component> all(Component root) {
        return Stream.concat(Stream.of(root), root.getChildren().flatMap(BoatPageTests::all));
    }

    void assertRefused(TextField field, String sentence) {
        assertThat(field.isInvalid()).isTrue();
        assertThat(field.getErrorMessage()).contains(sentence);
    }
}
