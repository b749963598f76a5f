package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Function;

/**
 * One boat's hidden causes, the signals that tell of them and the checks they bear on, ready to take evidence.
 *
 * <p>Causes are independent of each other beforehand. Given the causes, checks are independent of each other and of the
 * signals; signals depend on one cause each. Because of that the chance of everything observed is a product of small
 * tables, and the posterior is exact: it is the normalised product over all {@code 2^k} states of the causes.
 *
 * <p>Signals of one cause overlap: what makes a boat look kept in the sun without having been makes it look so in several
 * ways at once. A cause's <em>look-alike</em> chance {@code λ} is that of a history which is not the cause and leaves the
 * cause's signals as often as the cause does. With {@code p_s} and {@code q_s} the chances of signal {@code s} with and
 * without the cause, {@code P(signals | not) = λ Π p_s + (1-λ) Π q'_s} with {@code q'_s = (q_s - λ p_s)/(1-λ)}, so each
 * signal alone keeps its published weight, while all together can never weigh more than {@code 1/λ}. The network takes
 * {@code λ} as a share ({@link Cause#overlap}) of the greatest value that leaves every {@code q'} a chance.
 *
 * <p>Immutable, safe to share. Its making fits every check, its use does not.
 */
public final class BeliefNetwork {

    /** With more causes the exact posterior would take longer than a person waits. */
    public static final int MOST_CAUSES = 16;

    /**
     * Is a hidden binary cause.
     *
     * @param id its id
     * @param prior chance that it holds when nothing was observed, in (0, 1)
     * @param overlap how much its signals overlap, from 0 (independent) to 1 (as much as their chances allow)
     */
    public record Cause(String id, double prior, double overlap) {

        public Cause {
            if (!(prior > 0 && prior < 1)) {
                throw new IllegalArgumentException("The cause " + id + " has the prior " + prior + ", not in (0, 1)");
            }
            if (!(overlap >= 0 && overlap <= 1)) {
                throw new IllegalArgumentException("The cause " + id + " has the overlap " + overlap + ", not 0 to 1");
            }
        }
    }

    /**
     * Is something that can be seen or not, more often with one cause than without (or less often).
     *
     * @param id its id
     * @param cause the id of its cause
     * @param ifCause chance that it is there when the cause holds, in [0, 1]
     * @param ifNot chance that it is there when the cause does not hold, in [0, 1]
     */
    public record Signal(String id, String cause, double ifCause, double ifNot) {

        public Signal {
            if (!(ifCause >= 0 && ifCause <= 1 && ifNot >= 0 && ifNot <= 1)) {
                throw new IllegalArgumentException(
                        "The signal " + id + " has the chances " + ifCause + " and " + ifNot + ", not 0 to 1");
            }
        }
    }

    /**
     * Is the bearing of a cause on a check: by how much it multiplies the odds against fine.
     *
     * @param cause the cause's id
     * @param check the check's id
     * @param minorFactor factor on the odds of a minor fault, above 0
     * @param majorFactor factor on the odds of a major fault and of a stop, above 0
     */
    public record Influence(String cause, String check, double minorFactor, double majorFactor) {

        public Influence {
            if (!(minorFactor > 0 && majorFactor > 0 && Double.isFinite(minorFactor * majorFactor))) {
                throw new IllegalArgumentException("The influence of " + cause + " on " + check + " has the factors "
                        + minorFactor + " and " + majorFactor + ", which must be above 0");
            }
        }
    }

    private final List<Cause> causes;
    private final List<Signal> signals;
    private final List<CheckNode> checks;
    private final Map<String, Integer> causeIndex;
    private final Map<String, Integer> signalIndex;
    private final Map<String, Integer> checkIndex;
    private final double[] lookAlike;

    private BeliefNetwork(List<Cause> causes, List<Signal> signals, List<CheckNode> checks) {
        this.causes = causes;
        this.signals = signals;
        this.checks = checks;
        causeIndex = index("cause", causes, Cause::id);
        signalIndex = index("signal", signals, Signal::id);
        checkIndex = index("check", checks, CheckNode::id);
        lookAlike = lookAlikes();
    }

    /**
     * Makes a network and fits its checks.
     *
     * @param causes up to {@value #MOST_CAUSES} causes that can hold for this boat
     * @param signals what may be looked for; each names one of {@code causes}
     * @param checks the checks that apply to this boat with their chances when nothing is known, scaled for age and use
     * @param influences which cause bears on which check; a pair stands once at most
     * @throws IllegalArgumentException if an id is unknown or stands twice, there are too many causes, or a check's chances
     *     cannot be kept
     */
    public static BeliefNetwork of(
            List<Cause> causes,
            List<Signal> signals,
            SequencedMap<String, OutcomeChances> checks,
            Collection<Influence> influences) {
        if (causes.size() > MOST_CAUSES) {
            throw new IllegalArgumentException(
                    "There are " + causes.size() + " causes; at most " + MOST_CAUSES + " can be weighed exactly");
        }
        Map<String, Integer> causeIndex = index("cause", causes, Cause::id);
        Map<String, List<Influence>> byCheck = byCheck(influences, causeIndex, checks);
        List<CheckNode> nodes = new ArrayList<>();
        checks.forEach(
                (id, prior) -> nodes.add(node(id, prior, byCheck.getOrDefault(id, List.of()), causes, causeIndex)));
        return new BeliefNetwork(List.copyOf(causes), List.copyOf(signals), List.copyOf(nodes));
    }

    private static Map<String, List<Influence>> byCheck(
            Collection<Influence> influences, Map<String, Integer> causes, Map<String, OutcomeChances> checks) {
        Map<String, List<Influence>> byCheck = new HashMap<>();
        Set<List<String>> pairs = new HashSet<>();
        for (Influence each : influences) {
            if (!causes.containsKey(each.cause()) || !checks.containsKey(each.check())) {
                throw new IllegalArgumentException(
                        "The influence of " + each.cause() + " on " + each.check() + " names something unknown");
            }
            if (!pairs.add(List.of(each.cause(), each.check()))) {
                throw new IllegalArgumentException(
                        "The influence of " + each.cause() + " on " + each.check() + " stands twice");
            }
            byCheck.computeIfAbsent(each.check(), id -> new ArrayList<>()).add(each);
        }
        return byCheck;
    }

    private static CheckNode node(
            String id,
            OutcomeChances prior,
            List<Influence> unsorted,
            List<Cause> causes,
            Map<String, Integer> causeIndex) {
        List<Influence> influences = unsorted.stream()
                .sorted(Comparator.comparing(each -> causeIndex.get(each.cause())))
                .toList();
        int[] members = influences.stream()
                .mapToInt(each -> causeIndex.get(each.cause()))
                .toArray();
        double[] priors = new double[members.length];
        for (int i = 0; i < members.length; i++) {
            priors[i] = causes.get(members[i]).prior();
        }
        return new CheckNode(
                id,
                prior,
                new CauseSet(members, causes.size()),
                priors,
                influences.stream().mapToDouble(Influence::minorFactor).toArray(),
                influences.stream().mapToDouble(Influence::majorFactor).toArray());
    }

    private static <T> Map<String, Integer> index(String what, List<T> things, Function<T, String> id) {
        Map<String, Integer> index = new HashMap<>();
        for (T each : things) {
            if (index.putIfAbsent(id.apply(each), index.size()) != null) {
                throw new IllegalArgumentException("The " + what + " " + id.apply(each) + " stands twice");
            }
        }
        return Map.copyOf(index);
    }

    private double[] lookAlikes() {
        double[] chance = new double[causes.size()];
        Arrays.fill(chance, 1);
        for (Signal each : signals) {
            int cause = causeAt(each.cause());
            double ratio = each.ifCause() >= each.ifNot()
                    ? each.ifCause() == 0 ? 1 : each.ifNot() / each.ifCause()
                    : (1 - each.ifNot()) / (1 - each.ifCause());
            chance[cause] = Math.min(chance[cause], ratio);
        }
        for (int i = 0; i < chance.length; i++) {
            chance[i] *= causes.get(i).overlap();
        }
        return chance;
    }

    /** Tells the causes, in the order in which samplers take uniforms for them. */
    public List<Cause> causes() {
        return causes;
    }

    /** Tells the ids of the checks, in the order given. */
    public List<String> checks() {
        return checks.stream().map(CheckNode::id).toList();
    }

    /** Tells whether a signal belongs to one of this boat's causes. */
    public boolean knowsSignal(String id) {
        return signalIndex.containsKey(id);
    }

    /** Tells whether a check applies to this boat. */
    public boolean knowsCheck(String id) {
        return checkIndex.containsKey(id);
    }

    /** Tells what is believed when nothing was observed: the priors. */
    public Belief prior() {
        return believe(List.of());
    }

    /**
     * Weighs what was observed.
     *
     * @param evidence each signal once at most; each check may have a report and signs. The order does not matter
     * @throws IllegalArgumentException if something observed is unknown, a signal stands twice, or all of it together has no
     *     chance at all
     */
    public Belief believe(Collection<Evidence> evidence) {
        return new Belief(this, evidence);
    }

    List<CheckNode> nodes() {
        return checks;
    }

    Signal signal(String id) {
        return signals.get(at("signal", signalIndex, id));
    }

    int signalAt(String id) {
        return at("signal", signalIndex, id);
    }

    int causeAt(String id) {
        return at("cause", causeIndex, id);
    }

    int checkAt(String id) {
        return at("check", checkIndex, id);
    }

    double lookAlike(int cause) {
        return lookAlike[cause];
    }

    private static int at(String what, Map<String, Integer> index, String id) {
        Integer found = index.get(id);
        if (found == null) {
            throw new IllegalArgumentException("This boat has no " + what + " " + id);
        }
        return found;
    }
}
