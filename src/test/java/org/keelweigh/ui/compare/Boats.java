package org.keelweigh.ui.compare;

import java.util.TreeMap;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.PersonData;

/** Invented boats and people for the tests of the page. */
final class Boats {

    private Boats() {}

    static CandidateData priced(String name, BoatKind kind, double price) {
        return CandidateData.of(name, kind)
                .withListing(new ListingFacts(price, null, null, null, new TreeMap<>(), new TreeMap<>()));
    }

    /** Cheap and heavy to lift against dear and light: the weights decide. */
    static CandidateData cheap() {
        return priced("Cormorant", BoatKind.SIT_ON_TOP, 300);
    }

    static CandidateData dear() {
        return priced("Teal", BoatKind.INFLATABLE_BOARD, 1900);
    }

    static PersonData person(String name, String weightSet) {
        return PersonData.named(name).withWeightSet(weightSet);
    }
}
