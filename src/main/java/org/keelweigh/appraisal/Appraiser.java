package org.keelweigh.appraisal;

import java.util.List;
import org.keelweigh.shortlist.Facts;

/** Measures shortlists. Pure: the same facts in the same year give the same answer, on any machine. */
public final class Appraiser {

    /**
     * How many futures are drawn. Chosen by the measured error of the chance of coming first, see
     * {@code docs/method/futures.md}.
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
        Situation situation = SituationResolver.resolve(facts, catalogues.haul(), thisYear);
        Yardsticks yardsticks = catalogues.yardsticks().inCurrency(situation.priceFactor());
        Draws draws = new Draws(facts.shortlist().data().seed(), FUTURES);
        BoatMeasurer measurer = new BoatMeasurer(catalogues, situation, yardsticks, draws);
        List<BoatReport> boats =
                facts.candidates().stream().map(measurer::measure).toList();
        return new Measured(facts, situation, yardsticks, boats);
    }
}
