package org.keelweigh.appraisal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.keelweigh.cost.DiscountRate;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.Facts;

/** Measures shortlists. Pure: the same facts in the same year give the same answer, on any machine. */
public final class Appraiser {

    /**
     * How many futures are drawn. Chosen by the measured error of what is shown, see {@code docs/method/appraisal.md}.
     */
    public static final int FUTURES = 4096;

    private final Catalogues catalogues;

    /** Makes an appraiser that works by these catalogues. */
    public Appraiser(Catalogues catalogues) {
        this.catalogues = catalogues;
    }

    /** Tells the catalogues it works by. */
    public Catalogues catalogues() {
        return catalogues;
    }

    /**
     * Measures every boat of a shortlist.
     *
     * @param facts what people typed
     * @param thisYear the calendar year
     */
    public Measured measure(Facts facts, int thisYear) {
        return measure(facts, thisYear, null);
    }

    /**
     * Measures every boat of a shortlist of which an earlier state was measured before: boats that measure the same are
     * taken over.
     *
     * @param before the earlier state; {@code null} for none
     */
    public Measured measure(Facts facts, int thisYear, @Nullable Measured before) {
        return measure(facts, thisYear, before, FUTURES);
    }

    /**
     * Measures with another number of futures: fewer where many measurements have to be made, more to see what the number
     * leaves open.
     *
     * @param before the earlier state, with as many futures; {@code null} for none
     * @param futures how many, at least 2
     */
    public Measured measure(Facts facts, int thisYear, @Nullable Measured before, int futures) {
        Situation situation = SituationResolver.resolve(facts, catalogues.haul(), thisYear);
        Yardsticks yardsticks = catalogues
                .yardsticks()
                .inCurrency(situation.priceFactor())
                .overYears(situation.horizonYears(), new DiscountRate(situation.discountRate()));
        Draws draws = new Draws(facts.shortlist().data().seed(), futures);
        BoatMeasurer measurer = new BoatMeasurer(catalogues, situation, yardsticks, draws);
        Map<Candidate, String> names = drawNames(facts.candidates());
        Map<Candidate, BoatReport> known = known(before, situation, facts);
        List<BoatReport> boats = facts.candidates().stream()
                .map(each -> known.containsKey(each) ? known.get(each) : measurer.measure(each, names.get(each)))
                .toList();
        return new Measured(facts, situation, yardsticks, boats);
    }

    /** Fills in what nobody said about trip and people, without measuring a boat. */
    public Situation situation(Facts facts, int thisYear) {
        return SituationResolver.resolve(facts, catalogues.haul(), thisYear);
    }

    private static Map<Candidate, BoatReport> known(@Nullable Measured before, Situation situation, Facts facts) {
        boolean same = before != null
                && before.facts().shortlist().data().seed()
                        == facts.shortlist().data().seed()
                && before.situation().measuresLike(situation);
        if (!same) {
            return Map.of();
        }
        Map<Candidate, String> names = drawNames(facts.candidates());
        Map<Candidate, String> namesBefore = drawNames(before.facts().candidates());
        return before.boats().stream()
                .filter(each -> namesBefore.get(each.candidate()).equals(names.get(each.candidate())))
                .collect(Collectors.toMap(BoatReport::candidate, Function.identity()));
    }

    /**
     * Names the draws that are a boat's own by what people call it, not by its identifier: a shortlist that was exported and
     * imported elsewhere must give the same answer. Boats of the same name are counted.
     */
    private static Map<Candidate, String> drawNames(List<Candidate> candidates) {
        Map<String, Integer> seen = new HashMap<>();
        Map<Candidate, String> names = new HashMap<>();
        for (Candidate each : candidates) {
            int count = seen.merge(each.data().name(), 1, Integer::sum);
            names.put(each, each.data().name() + "#" + count);
        }
        return names;
    }
}
