package org.keelweigh.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.keelweigh.appraisal.Answer;
import org.keelweigh.appraisal.Answers;
import org.keelweigh.appraisal.Appraiser;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.appraisal.CheckAdvisor;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Offers;
import org.keelweigh.appraisal.Outlook;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Outcome;
import org.keelweigh.decision.Ranking;
import org.keelweigh.decision.Weights;
import org.keelweigh.decision.robust.WeightStability;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistId;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What follows a moved slider and a changed finding, for eight and for twelve boats. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class SliderBenchmark {

    private static final int YEAR = 2026;

    @Param({"8", "12"})
    int boats;

    private Catalogues catalogues;
    private Appraiser appraiser;
    private Facts changed;
    private Measured measured;
    private Outlook outlook;
    private Perspective perspective;
    private double share = 0.1;

    @Setup
    public void measure() {
        catalogues = Catalogues.read(Catalogue.shipped());
        appraiser = new Appraiser(catalogues);
        ShortlistId id = ShortlistId.fresh();
        Shortlist shortlist = new Shortlist(id, 0, ShortlistData.named("Benchmark"));
        List<Candidate> candidates = new ArrayList<>();
        for (int b = 0; b < boats; b++) {
            BoatKind kind = BoatKind.values()[b % BoatKind.values().length];
            candidates.add(new Candidate(
                    CandidateId.fresh(),
                    id,
                    0,
                    CandidateData.of("Boat " + b, kind)
                            .withListing(new ListingFacts(
                                    600.0 + 40 * b, null, null, null, new TreeMap<>(), new TreeMap<>()))));
        }
        measured = appraiser.measure(new Facts(shortlist, List.of(), candidates), YEAR);
        Candidate first = candidates.getFirst();
        candidates.set(
                0, new Candidate(first.id(), id, 1, first.data().withFinding(Finding.of("hull-uv", Outcome.MAJOR))));
        changed = new Facts(shortlist, List.of(), candidates);
        outlook = Outlook.of(measured);
        perspective = measured.perspectives().getFirst();
    }

    private Perspective moved() {
        share = share > 0.6 ? 0.1 : share + 0.001;
        Weights weights = perspective.weights().with("stability", share);
        return perspective.with(weights);
    }

    /** New weights to values, ranking and the stability of every weight. */
    @Benchmark
    public List<WeightStability> valuesAndStability() {
        Perspective moved = moved();
        Ranking ranking = moved.ranking();
        return ranking.leader().isEmpty() ? List.of() : moved.stability();
    }

    /** New weights to all rank shares over the futures. */
    @Benchmark
    public Confidence confidence() {
        return outlook.confidence(moved());
    }

    /** New weights to the answer in words with its confidence. */
    @Benchmark
    public Answer answer() {
        Perspective moved = moved();
        return Answers.of(measured, moved, Optional.of(outlook.confidence(moved)), Optional.empty());
    }

    /** New weights to tie prices and curves of all boats. */
    @Benchmark
    public List<BoatOffer> offers() {
        return Offers.of(outlook, moved(), catalogues);
    }

    /** A changed finding to measures and futures of all boats. */
    @Benchmark
    public Measured changedFinding() {
        return appraiser.measure(changed, YEAR, measured);
    }

    /** All boats measured from nothing. */
    @Benchmark
    public Measured allBoats() {
        return appraiser.measure(changed, YEAR);
    }

    /** What to check next, over every check of every boat. */
    @Benchmark
    public NextChecks nextChecks() {
        return CheckAdvisor.advise(catalogues, outlook, perspective);
    }
}
