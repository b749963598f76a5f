package org.keelweigh.appraisal;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Outcome;
import org.keelweigh.decision.Weights;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistId;

/** Invented shortlists, and perspectives with values chosen by hand. */
final class Samples {

    static final Catalogues CATALOGUES = Catalogues.read(Catalogue.shipped());
    static final ShortlistId LIST = ShortlistId.fresh();
    private static final int YEAR = 2026;

    private Samples() {}

    static CandidateData priced(String name, BoatKind kind, double price) {
        return CandidateData.of(name, kind)
                .withListing(new ListingFacts(price, null, null, null, new TreeMap<>(), new TreeMap<>()));
    }

    static CandidateData stopped(String name) {
        return priced(name, BoatKind.SIT_ON_TOP, 10).withFinding(Finding.of("hin-read", Outcome.STOP));
    }

    static Person person(String name, String... heavy) {
        TreeMap<String, Double> points = new TreeMap<>();
        CATALOGUES.yardsticks().all().forEach(each -> points.put(each.id(), 0.0));
        Arrays.stream(heavy).forEach(each -> points.put(each, 100.0));
        return new Person(PersonId.fresh(), LIST, 0, PersonData.named(name).withWeights(points));
    }

    static Facts facts(List<Person> people, CandidateData... boats) {
        return new Facts(
                new Shortlist(LIST, 0, ShortlistData.named("Test")),
                people,
                Arrays.stream(boats)
                        .map(each -> new Candidate(CandidateId.fresh(), LIST, 0, each))
                        .toList());
    }

    static Measured measured(List<Person> people, CandidateData... boats) {
        return new Appraiser(CATALOGUES).measure(facts(people, boats), YEAR);
    }

    /** Three boats that are alike, for perspectives whose values are chosen by hand. */
    static Measured threeAlike() {
        return measured(
                List.of(),
                priced("A", BoatKind.SIT_ON_TOP, 500),
                priced("B", BoatKind.SIT_ON_TOP, 500),
                priced("C", BoatKind.SIT_ON_TOP, 500));
    }

    /** Equal weights on the first criteria, as many as there are columns; the others have none and no value. */
    static Perspective perspective(Measured measured, double[][] columns, boolean... ruledOut) {
        List<Yardstick> yardsticks = measured.yardsticks().all();
        Map<String, Double> weights = new LinkedHashMap<>();
        for (int c = 0; c < yardsticks.size(); c++) {
            weights.put(yardsticks.get(c).id(), c < columns[0].length ? 1.0 : 0.0);
        }
        double[][] values = Arrays.stream(columns)
                .map(row -> Arrays.copyOf(row, yardsticks.size()))
                .toArray(double[][]::new);
        boolean[] flags = ruledOut.length == 0 ? new boolean[columns.length] : ruledOut;
        return new Perspective(Optional.empty(), "Test", Weights.of(weights), values, flags);
    }
}
