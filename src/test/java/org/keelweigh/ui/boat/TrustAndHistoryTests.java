package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.identity.PlateState;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.FieldPath;

class TrustAndHistoryTests extends BoatPageTests {

    // Format of 33 CFR 181.25: maker's code, five serial characters without I, O and Q, month letter, year digit, model
    // year.
    private static final String FITS = "ZZZ12345C122";
    private static final String SLIPPED = "ZZZ1234OC122";

    @Test
    void readsTheHullNumberPartByPart() {
        open(BoatSection.TRUST);
        number(FITS);

        assertThat(words("plate-reading")).contains("Maker's codeZZZ", "Serial12345", "March 2021", "Model year2022");
        assertThat(kept().plate().number()).isEqualTo(FITS);
    }

    @Test
    void suggestsTheReadingBehindASlipAndTakesItWithOneTap() {
        open(BoatSection.TRUST);
        number(SLIPPED);
        assertThat(words("plate-verdict")).contains("ask for papers");

        tap("plate-suggestion");

        assertThat(kept().plate().number()).isEqualTo("ZZZ12340C122");
        assertThat(words("plate-reading")).contains("Serial12340");
        assertThat(byId(TextField.class, "plate-number").getValue()).isEqualTo("ZZZ12340C122");
    }

    @Test
    void rulesTheBoatOutWhenThePlateWasTamperedWith() {
        open(BoatSection.TRUST);
        @SuppressWarnings("unchecked")
        Select<PlateState> state = byId(Select.class, "plate-state");
        test(state).selectItem("Ground off, cut, filled or stamped over");

        assertThat(kept().plate().state()).isEqualTo("tampered");
        assertThat(words("boat-place")).contains("ruled out");
    }

    @Test
    void weighsASignOfTheListing() {
        open(BoatSection.TRUST);
        String before = words("listing-verdict");
        Component first = all(byId(Component.class, "section-trust"))
                .filter(YesNo.class::isInstance)
                .findFirst()
                .orElseThrow();
        test((NativeButton) all(first)
                        .filter(NativeButton.class::isInstance)
                        .findFirst()
                        .orElseThrow())
                .click();

        assertThat(kept().listing().signals()).hasSize(1).containsValue(true);
        assertThat(words("listing-verdict")).isNotEqualTo(before);
    }

    @Test
    void tellsWhatChangedByWhomAndReturnsToAnEarlierState() {
        save("boat.lengthM", 3.6, "Dana");
        save("listing.askingPrice", 950, "Robin");
        open(BoatSection.HISTORY);

        assertThat(words("history"))
                .contains("Robin:", "Asking price: $950.", "Dana:", "Length: 3.60 m.", "Put on the list.");

        tap("back-to-1");

        assertThat(kept().listing().askingPrice()).isNull();
        assertThat(kept().boat().lengthM()).isEqualTo(3.6);
        assertThat(words("history")).contains("Asking price: not known any more; it was $950.");

        test($(Button.class).withText("Undo").single()).click();

        assertThat(kept().listing().askingPrice()).isEqualTo(950);
    }

    private void number(String text) {
        test(byId(TextField.class, "plate-number")).setValue(text);
    }

    private void save(String field, Object value, String who) {
        Candidate now = facts().candidate(boat).orElseThrow();
        editing.save(new Candidate(boat, list, now.version(), new FieldPath(field).with(now.data(), value)), who);
    }
}
