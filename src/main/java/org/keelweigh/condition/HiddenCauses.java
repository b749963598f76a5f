package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.condition.BeliefNetwork.Cause;
import org.keelweigh.condition.BeliefNetwork.Influence;
import org.keelweigh.condition.BeliefNetwork.Signal;

/**
 * The hidden causes with their signals and effects, and the network they make for a boat.
 *
 * <p>Read from the tables {@code causes.csv}, {@code signals.csv}, {@code effects.csv} and {@code fault-phrases.csv}. The
 * method stands in {@code docs/method/belief.md}. Networks are kept once made, because fitting one takes longer than using
 * it; safe for several threads.
 */
public final class HiddenCauses {

    /** Even a boat sold in its first season was launched; without that no fault could be believed of it at all. */
    private static final double LEAST_AGE_YEARS = 0.5;

    private static final int MOST_KEPT = 200;

    private final InspectionCatalogue inspections;
    private final Map<String, HiddenCause> causes;
    private final Map<String, CauseSignal> signals;
    private final List<CauseEffect> effects;
    private final FaultPhrases phrases;
    private final Map<Key, BeliefNetwork> networks = new LinkedHashMap<>();

    private HiddenCauses(
            InspectionCatalogue inspections,
            Map<String, HiddenCause> causes,
            Map<String, CauseSignal> signals,
            List<CauseEffect> effects,
            FaultPhrases phrases) {
        this.inspections = inspections;
        this.causes = causes;
        this.signals = signals;
        this.effects = effects;
        this.phrases = phrases;
    }

    /** Is what a network depends on. */
    private record Key(BoatKind kind, HullMaterial material, DriveKind drive, double ageYears, double useDays) {}

    /**
     * Reads and validates the tables.
     *
     * @throws org.keelweigh.catalogue.CatalogueException naming file and line of what is wrong
     */
    public static HiddenCauses read(Catalogue catalogue, InspectionCatalogue inspections) {
        Map<String, HiddenCause> causes = new LinkedHashMap<>();
        catalogue.table("causes.csv").unique("cause").map(HiddenCause::of).forEach(each -> causes.put(each.id(), each));
        Set<List<String>> pairs = new HashSet<>();
        List<CauseEffect> effects = catalogue.table("effects.csv").map(row -> effect(row, causes, inspections, pairs));
        Map<String, CauseSignal> signals = new LinkedHashMap<>();
        catalogue
                .table("signals.csv")
                .unique("signal")
                .map(row -> signal(row, causes, inspections, pairs))
                .forEach(each -> signals.put(each.id(), each));
        return new HiddenCauses(inspections, causes, signals, effects, FaultPhrases.read(catalogue, inspections));
    }

    private static CauseEffect effect(
            Row row, Map<String, HiddenCause> causes, InspectionCatalogue inspections, Set<List<String>> pairs) {
        CauseEffect effect = CauseEffect.of(row);
        requireKnown(row, causes.containsKey(effect.cause()), "cause", effect.cause());
        Optional<Check> check = inspections.check(effect.check());
        requireKnown(row, check.isPresent(), "check", effect.check());
        if (!pairs.add(List.of(effect.cause(), effect.check()))) {
            throw row.complaint(
                    "the effect of " + effect.cause() + " on " + effect.check() + " stands in an earlier line");
        }
        // Computed here for its complaint alone, so that a risk without room names its line.
        effect.oddsFactor(
                causes.get(effect.cause()).prior(), check.orElseThrow().chancesAtFiveYears());
        return effect;
    }

    private static CauseSignal signal(
            Row row, Map<String, HiddenCause> causes, InspectionCatalogue inspections, Set<List<String>> pairs) {
        CauseSignal signal = CauseSignal.of(row);
        requireKnown(row, causes.containsKey(signal.cause()), "cause", signal.cause());
        for (String check : signal.checks()) {
            requireKnown(row, inspections.check(check).isPresent(), "check", check);
        }
        if (signal.from().isPresent()
                && !pairs.contains(List.of(signal.cause(), signal.checks().getFirst()))) {
            throw row.complaint(
                    "the signal stands for an outcome of " + signal.checks().getFirst()
                            + ", so effects.csv needs a line for " + signal.cause() + " on that check");
        }
        return signal;
    }

    private static void requireKnown(Row row, boolean known, String what, String id) {
        if (!known) {
            throw row.complaint("there is no " + what + " \"" + id + "\"");
        }
    }

    /** Tells the causes that can hold for {@code boat}, in the table's order. */
    public List<HiddenCause> causes(Boat boat) {
        return causes.values().stream().filter(each -> each.applies().to(boat)).toList();
    }

    /** Tells the signals worth looking for on {@code boat}, cause by cause. */
    public List<CauseSignal> signals(Boat boat) {
        return signals.values().stream()
                .filter(each -> causes.get(each.cause()).applies().to(boat))
                .toList();
    }

    /** Finds a cause by its id. */
    public Optional<HiddenCause> cause(String id) {
        return Optional.ofNullable(causes.get(id));
    }

    /** Finds a signal by its id. */
    public Optional<CauseSignal> signal(String id) {
        return Optional.ofNullable(signals.get(id));
    }

    /** Tells how a sentence names what a check looks for, such as "cracks in the hull". */
    public String faultPhrase(String check) {
        return phrases.fault(check);
    }

    /** Tells how a sentence names what was observed, such as "a minor finding at the hull". */
    public String phrase(Evidence evidence) {
        return switch (evidence) {
            case Evidence.SignalLook look -> phrase(look.about(), look.ifThere() >= look.ifAbsent());
            case Evidence.CheckSign sign -> phrase(sign.sign(), sign.seen());
            case Evidence.CheckReport report -> phrases.found(report.about(), report.outcome());
        };
    }

    private String phrase(String signal, boolean seen) {
        return signal(signal).map(each -> each.phrase(seen)).orElse(signal);
    }

    /**
     * Makes, or finds, the network of a boat.
     *
     * @param ageYears its age, years, 0 or more; counted as at least half a year
     * @param useDays days of use over its whole life, 0 or more; counted as at least half a year's
     */
    public BeliefNetwork network(Boat boat, double ageYears, double useDays) {
        Key key = new Key(
                boat.kind(),
                boat.material(),
                boat.drive(),
                Math.max(ageYears, LEAST_AGE_YEARS),
                Math.max(useDays, LEAST_AGE_YEARS * InspectionCatalogue.USUAL_USE_DAYS_PER_YEAR));
        synchronized (networks) {
            BeliefNetwork kept = networks.get(key);
            if (kept == null) {
                if (networks.size() >= MOST_KEPT) {
                    networks.clear();
                }
                kept = make(boat, key);
                networks.put(key, kept);
            }
            return kept;
        }
    }

    private BeliefNetwork make(Boat boat, Key key) {
        List<HiddenCause> applicable = causes(boat);
        Set<String> ids = new HashSet<>();
        applicable.forEach(each -> ids.add(each.id()));
        LinkedHashMap<String, OutcomeChances> priors = new LinkedHashMap<>();
        Map<String, Check> checks = new HashMap<>();
        for (Check each : inspections.applicable(boat)) {
            checks.put(each.id(), each);
            priors.put(each.id(), inspections.priorOutcomes(each, key.ageYears(), key.useDays()));
        }
        List<Influence> influences = effects.stream()
                .filter(each -> ids.contains(each.cause()) && checks.containsKey(each.check()))
                .map(each -> influence(each, checks.get(each.check())))
                .toList();
        return BeliefNetwork.of(
                applicable.stream()
                        .map(each -> new Cause(each.id(), each.prior(), each.overlap()))
                        .toList(),
                signals(boat).stream()
                        .map(each -> new Signal(each.id(), each.cause(), each.ifCause(), each.ifNot()))
                        .toList(),
                priors,
                influences);
    }

    private Influence influence(CauseEffect effect, Check check) {
        double factor = effect.oddsFactor(causes.get(effect.cause()).prior(), check.chancesAtFiveYears());
        return new Influence(effect.cause(), effect.check(), Math.pow(factor, effect.minorPower()), factor);
    }

    /**
     * Weighs what was found at a boat.
     *
     * @param boat the boat
     * @param ageYears its age, years, 0 or more
     * @param useDays days of use over its whole life, 0 or more
     * @param findings what was found; findings of checks that do not apply, or of parts not fitted, say nothing
     * @param looks signals that somebody looked for: id to whether it was there; ids that are none of this boat's are passed
     *     over, because the same list carries the signs about the seller
     */
    public Belief believe(
            Boat boat, double ageYears, double useDays, Collection<Finding> findings, Map<String, Boolean> looks) {
        BeliefNetwork network = network(boat, ageYears, useDays);
        return network.believe(evidence(network, findings, looks));
    }

    private List<Evidence> evidence(BeliefNetwork network, Collection<Finding> findings, Map<String, Boolean> looks) {
        List<Evidence> evidence = new ArrayList<>();
        Set<String> found = new HashSet<>();
        for (Finding each : findings) {
            found.add(each.check());
            if (network.knowsCheck(each.check()) && each.outcome() != Outcome.NOT_FITTED) {
                evidence.add(new Evidence.CheckReport(
                        each.check(), each.outcome(), reliability(each.check(), each.method())));
            }
        }
        Map<String, Evidence.CheckSign> signs = new LinkedHashMap<>();
        for (CauseSignal signal : signals.values()) {
            Boolean seen = looks.get(signal.id());
            if (seen == null
                    || !network.knowsSignal(signal.id())
                    || signal.checks().stream().anyMatch(found::contains)) {
                continue;
            }
            if (signal.from().isPresent() && network.knowsCheck(signal.checks().getFirst())) {
                signs.merge(signal.checks().getFirst(), sign(signal, seen), HiddenCauses::stronger);
            } else {
                evidence.add(Evidence.SignalLook.of(signal.id(), seen));
            }
        }
        evidence.addAll(signs.values());
        return evidence;
    }

    private Evidence.CheckSign sign(CauseSignal signal, boolean seen) {
        String check = signal.checks().getFirst();
        return new Evidence.CheckSign(
                check, signal.id(), signal.from().orElseThrow(), seen, reliability(check, Method.TOUCHED));
    }

    /** Two signs of one fault are one fault: the worse one that was seen counts, else the milder one that was not. */
    private static Evidence.CheckSign stronger(Evidence.CheckSign one, Evidence.CheckSign other) {
        if (one.seen() != other.seen()) {
            return one.seen() ? one : other;
        }
        boolean oneWorse = one.least().compareTo(other.least()) >= 0;
        return oneWorse == one.seen() ? one : other;
    }

    /**
     * Tells how good a way of knowing is at one check.
     *
     * @throws IllegalArgumentException if there is no such check
     */
    public Reliability reliability(String check, Method method) {
        Check known =
                inspections.check(check).orElseThrow(() -> new IllegalArgumentException("There is no check " + check));
        return new Reliability(inspections.sensitivity(known, method), inspections.falseAlarm(method));
    }

    /** Tells the stories that the evidence makes likelier, the most certain first, each with a sentence. */
    public List<BoatHistory> histories(Belief belief) {
        return new BoatHistories(this, effects, belief).told();
    }
}
