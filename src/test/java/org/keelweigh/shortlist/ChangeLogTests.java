package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.quantity.Estimate;

class ChangeLogTests {

    private static final CandidateData BOAT = CandidateData.of("Green boat", BoatKind.CANOE);
    private static final Map<String, String> WORDS =
            Map.of("hull-crack", "Cracks in the hull", "vest", "life jackets", "photo-stock", "a borrowed picture");
    private static final ChangeLog LOG =
            new ChangeLog(new Display(UnitSystem.METRIC, "USD"), id -> WORDS.getOrDefault(id, id));

    private static CandidateData with(CandidateData data, String field, Object value) {
        return new FieldPath(field).with(data, value);
    }

    @Test
    void saysNothingWhereNothingChanged() {
        assertThat(LOG.between(BOAT, with(BOAT, "name", "Green boat"))).isEmpty();
    }

    @Test
    void saysWhatBecameKnownWhatChangedAndWhatWasTakenBack() {
        CandidateData known = with(BOAT, "boat.lengthM", 4.5);

        assertThat(LOG.between(BOAT, known)).containsExactly("Length: 4.50 m.");
        assertThat(LOG.between(known, with(known, "boat.lengthM", 4.8)))
                .containsExactly("Length: 4.80 m; it was 4.50 m.");
        assertThat(LOG.between(known, BOAT)).containsExactly("Length: not known any more; it was 4.50 m.");
    }

    @Test
    void writesInTheUnitsOfTheReader() {
        ChangeLog us = new ChangeLog(new Display(UnitSystem.US, "USD"), id -> id);

        assertThat(us.between(BOAT, with(BOAT, "boat.lengthM", 12 * 0.3048))).containsExactly("Length: 12 ft 0 in.");
    }

    @Test
    void namesFindingsGearAndSignsInWords() {
        Finding crack =
                new Finding("hull-crack", Outcome.MAJOR, Method.REPAIRER, 30.0, "by the seat", Estimate.exactly(120));
        CandidateData after =
                with(with(BOAT.withFinding(crack), "listing.included.vest", 2), "listing.signals.photo-stock", true);

        assertThat(LOG.between(BOAT, after))
                .containsExactly(
                        "Comes with life jackets: 2 of them.",
                        "Sign “a borrowed picture”: yes.",
                        "Cracks in the hull: major, looked at by a shop or repairer, measured 30.00, quoted at $120, “by the seat”.");
    }

    @Test
    void toldBackwardsNamesTheSameFields() {
        CandidateData after = with(with(BOAT, "notes", "nice"), "daysToLaunch", 10);
        List<String> there = LOG.between(BOAT, after);
        List<String> back = LOG.between(after, BOAT);

        assertThat(there).hasSameSizeAs(back).hasSize(2);
        assertThat(back)
                .containsExactlyInAnyOrder(
                        "Days to the first launch: not known any more; it was 10 days.",
                        "Notes: not known any more; it was “nice”.");
    }
}
