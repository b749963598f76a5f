package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * How likely it is that something is wrong with a sale itself, and what would settle it.
 *
 * <p>Starting from how often things are wrong where the boat is offered, the odds are multiplied by the ratio of each sign
 * present. Signs of one group say much the same, so the strongest of a group counts fully and each further one by the power
 * 0.5: {@code ln odds = ln base odds + Σ_groups (w_strongest + 0.5 Σ_others w)} with {@code w = ln ratio}. A sign that was
 * looked for and not there changes nothing: the table has ratios for presence only. Fraud and theft are reckoned separately.
 * Where the boat is offered never stops a sale alone: that takes at least one sign against it. A gift has no price to judge.
 * Common practice, no published source.
 *
 * <p>Figures are about signs, never about a person: a verdict speaks of signs that often go with fraud.
 *
 * @param fraud chance that there is no such boat or no such sale, in (0, 1)
 * @param stolen chance that the boat is stolen, in (0, 1)
 * @param verdict what to do
 * @param reasons the signs that count, those with the most weight first
 * @param bestProof the one proof that would lower the concern most, when any would
 * @param priceShare asking price as a share of the fair price, when both are known
 * @param sentence the verdict in plain words
 */
public record ListingAssessment(
        double fraud,
        double stolen,
        ListingVerdict verdict,
        List<Reason> reasons,
        Optional<Proof> bestProof,
        Optional<Double> priceShare,
        String sentence) {

    private static final double UNDER_HALF = 0.5;
    private static final double LOW = 0.7;
    private static final double HIGH = 1.3;
    private static final double FURTHER_POWER = 0.5;

    public ListingAssessment {
        reasons = List.copyOf(reasons);
    }

    /**
     * Is one sign and what it did.
     *
     * @param signal the sign
     * @param fraudWeight what it added to the logarithm of the odds of fraud, after its group was taken into account
     * @param stolenWeight what it added to the logarithm of the odds of a stolen boat, likewise
     */
    public record Reason(ListingSignal signal, double fraudWeight, double stolenWeight) {

        /** Tells whether it speaks against the sale on the whole. */
        public boolean against() {
            return fraudWeight + stolenWeight > 0;
        }

        private double size() {
            return Math.max(Math.abs(fraudWeight), Math.abs(stolenWeight));
        }
    }

    /**
     * Is a proof that could be asked for.
     *
     * @param signal the sign that it would give
     * @param concernAfter the chance of fraud or theft once it is given, in [0, 1]
     */
    public record Proof(ListingSignal signal, double concernAfter) {}

    /**
     * Assesses a listing.
     *
     * @param facts what is known about it; its channel counts as a private person when nobody said
     * @param findings what was found at the boat; some findings are signs
     * @param fairPrice what comparable boats fetch, same currency as the asking price; {@code null} when not known
     * @param catalogue the signs
     * @throws IllegalArgumentException if the fair price is not above 0
     */
    public static ListingAssessment of(
            ListingFacts facts, Collection<Finding> findings, @Nullable Double fairPrice, ListingCatalogue catalogue) {
        if (fairPrice != null && !(fairPrice > 0 && Double.isFinite(fairPrice))) {
            throw new IllegalArgumentException("The fair price is " + fairPrice + "; it has to be above 0");
        }
        Optional<Double> share = Optional.ofNullable(facts.askingPrice())
                // what is given away is no bait: a price of nothing says nothing about the seller
                .filter(asking -> fairPrice != null && asking > 0)
                .map(asking -> asking / fairPrice);
        SortedMap<String, ListingSignal> present = present(facts, findings, share, catalogue);
        ListingCatalogue.BaseRate base =
                catalogue.baseRate(facts.seller() == null ? SellerKind.PRIVATE : facts.seller());
        double fraud = chance(base.fraud(), present.values(), ListingSignal::fraudWeight);
        double stolen = chance(base.stolen(), present.values(), ListingSignal::stolenWeight);
        List<Reason> reasons = reasons(present.values());
        double concern = together(fraud, stolen);
        ListingVerdict verdict = reasons.stream().anyMatch(Reason::against)
                ? ListingVerdict.of(concern)
                : ListingVerdict.withoutSigns(concern);
        Optional<Proof> proof = bestProof(base, present, concern, catalogue);
        return new ListingAssessment(
                fraud, stolen, verdict, reasons, proof, share, sentence(fraud, stolen, verdict, reasons));
    }

    /** Tells the chance of fraud or theft: their sum, at most 1. */
    public double concern() {
        return together(fraud, stolen);
    }

    private static double together(double fraud, double stolen) {
        return Math.min(1, fraud + stolen);
    }

    private static SortedMap<String, ListingSignal> present(
            ListingFacts facts, Collection<Finding> findings, Optional<Double> share, ListingCatalogue catalogue) {
        SortedMap<String, ListingSignal> present = new TreeMap<>();
        facts.signals().forEach((id, there) -> {
            if (there && !(share.isPresent() && ListingCatalogue.aboutPrice(id))) {
                catalogue.signal(id).ifPresent(signal -> present.put(id, signal));
            }
        });
        share.flatMap(ListingAssessment::priceSignal)
                .flatMap(catalogue::signal)
                .ifPresent(signal -> present.put(signal.id(), signal));
        for (ListingSignal signal : catalogue.signals()) {
            boolean found = findings.stream()
                    .anyMatch(each -> Optional.of(each.check()).equals(signal.check())
                            && Optional.of(each.outcome()).equals(signal.outcome()));
            if (found) {
                present.put(signal.id(), signal);
            }
        }
        return withoutReplaced(present);
    }

    private static SortedMap<String, ListingSignal> withoutReplaced(SortedMap<String, ListingSignal> present) {
        SortedMap<String, ListingSignal> left = new TreeMap<>(present);
        present.values().forEach(each -> each.replaces().forEach(left::remove));
        return left;
    }

    private static Optional<String> priceSignal(double share) {
        if (share < UNDER_HALF) {
            return Optional.of(ListingCatalogue.PRICE_UNDER_HALF);
        }
        if (share < LOW) {
            return Optional.of(ListingCatalogue.PRICE_LOW);
        }
        return share <= HIGH ? Optional.of(ListingCatalogue.PRICE_USUAL) : Optional.empty();
    }

    private static double chance(
            double base, Collection<ListingSignal> present, ToDoubleFunction<ListingSignal> weight) {
        double logOdds = Math.log(base / (1 - base));
        for (double each : weights(present, weight).values()) {
            logOdds += each;
        }
        return 1 / (1 + Math.exp(-logOdds));
    }

    /** Computes what each sign adds to the log-odds: the strongest of its group fully, the others by half. */
    private static Map<ListingSignal, Double> weights(
            Collection<ListingSignal> present, ToDoubleFunction<ListingSignal> weight) {
        Map<String, ListingSignal> strongest = new LinkedHashMap<>();
        for (ListingSignal each : present) {
            strongest.merge(
                    each.group(),
                    each,
                    (one, other) ->
                            Math.abs(weight.applyAsDouble(other)) > Math.abs(weight.applyAsDouble(one)) ? other : one);
        }
        Map<ListingSignal, Double> weights = new LinkedHashMap<>();
        for (ListingSignal each : present) {
            boolean first = strongest.get(each.group()) == each;
            weights.put(each, weight.applyAsDouble(each) * (first ? 1 : FURTHER_POWER));
        }
        return weights;
    }

    private static List<Reason> reasons(Collection<ListingSignal> present) {
        Map<ListingSignal, Double> fraud = weights(present, ListingSignal::fraudWeight);
        Map<ListingSignal, Double> stolen = weights(present, ListingSignal::stolenWeight);
        return present.stream()
                .map(each -> new Reason(each, fraud.get(each), stolen.get(each)))
                .sorted(Comparator.comparingDouble((Reason each) -> -each.size())
                        .thenComparing(each -> each.signal().id()))
                .toList();
    }

    private static Optional<Proof> bestProof(
            ListingCatalogue.BaseRate base,
            SortedMap<String, ListingSignal> present,
            double concern,
            ListingCatalogue catalogue) {
        List<Proof> proofs = new ArrayList<>();
        for (ListingSignal each : catalogue.signals()) {
            if (each.proof().isEmpty() || present.containsKey(each.id())) {
                continue;
            }
            SortedMap<String, ListingSignal> given = new TreeMap<>(present);
            given.put(each.id(), each);
            Collection<ListingSignal> left = withoutReplaced(given).values();
            double after = together(
                    chance(base.fraud(), left, ListingSignal::fraudWeight),
                    chance(base.stolen(), left, ListingSignal::stolenWeight));
            proofs.add(new Proof(each, after));
        }
        return proofs.stream()
                .filter(each -> each.concernAfter() < concern)
                .min(Comparator.comparingDouble(Proof::concernAfter));
    }

    private static String sentence(double fraud, double stolen, ListingVerdict verdict, List<Reason> reasons) {
        List<String> against = reasons.stream()
                .filter(Reason::against)
                .limit(2)
                .map(each -> each.signal().phrase())
                .toList();
        String why = against.isEmpty()
                ? "No sign here often goes with fraud or theft"
                        + (verdict.compareTo(ListingVerdict.PAPERS_FIRST) >= 0 ? ", but this way of selling does" : "")
                : "There are signs that often go with fraud or theft: " + String.join(", and ", against);
        return String.format(
                Locale.ROOT,
                "%s. Rough chance of fraud %s, of a stolen boat %s: %s.",
                why,
                percent(fraud),
                percent(stolen),
                verdict.label());
    }

    private static String percent(double chance) {
        if (chance < 0.01) {
            return "under 1 %";
        }
        return String.format(Locale.ROOT, chance < 0.0995 ? "%.1f %%" : "%.0f %%", 100 * chance);
    }
}
