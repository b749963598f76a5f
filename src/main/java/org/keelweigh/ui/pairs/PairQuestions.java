package org.keelweigh.ui.pairs;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.keelweigh.appraisal.Family;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.appraisal.Yardsticks;
import org.keelweigh.decision.weight.PairAnswers;
import org.keelweigh.decision.weight.PairAnswers.Answer;
import org.keelweigh.decision.weight.PairAnswers.Pair;
import org.keelweigh.decision.weight.PairwiseComparison;
import org.keelweigh.decision.weight.RandomIndex;

/**
 * Which pairs are asked and what the answers come to. Each family is gone through from what has most points to what has least,
 * then the heads of the families are compared: like is compared with like, and no more is asked than is needed. What has no
 * points is not asked about and keeps none.
 */
final class PairQuestions {

    private static final int FEWEST = 2;
    /** An answer farther than this factor from what the others say is worth a second look: estimate. */
    private static final double FAR_APART = 2;
    /** The usual bound of the consistency ratio (Saaty 1980). */
    private static final double MOST_RATIO = 0.10;

    private final List<Yardstick> compared;
    private final List<Yardstick> leftOut;
    private final List<Pair> needed;
    private final Deque<Pair> gone = new ArrayDeque<>();
    private PairAnswers answers;
    private Optional<Pair> current;

    PairQuestions(List<Yardstick> all, Map<String, Double> points) {
        List<Yardstick> weighed = all.stream()
                .filter(each -> points.getOrDefault(each.id(), 0.0) > 0)
                .toList();
        List<Yardstick> asked = new ArrayList<>(weighed.size() < FEWEST ? all : weighed);
        asked.sort(Comparator.comparingDouble((Yardstick each) -> points.getOrDefault(each.id(), 0.0))
                .reversed());
        compared = List.copyOf(asked);
        leftOut = all.stream().filter(each -> !compared.contains(each)).toList();
        needed = chains(compared);
        answers = PairAnswers.none(compared.size());
        current = Optional.of(needed.getFirst());
    }

    private static List<Pair> chains(List<Yardstick> compared) {
        List<Pair> pairs = new ArrayList<>();
        List<Integer> heads = new ArrayList<>();
        for (Family family : Family.values()) {
            List<Integer> members = new ArrayList<>();
            for (int i = 0; i < compared.size(); i++) {
                if (compared.get(i).family() == family) {
                    members.add(i);
                }
            }
            chain(members, pairs);
            members.stream().findFirst().ifPresent(heads::add);
        }
        heads.sort(Comparator.naturalOrder());
        chain(heads, pairs);
        return List.copyOf(pairs);
    }

    private static void chain(List<Integer> links, List<Pair> pairs) {
        for (int i = 1; i < links.size(); i++) {
            pairs.add(new Pair(links.get(i - 1), links.get(i)));
        }
    }

    /** Tells the pair that is asked about now; empty when there are answers enough. */
    Optional<Pair> current() {
        return current;
    }

    Yardstick yardstick(int place) {
        return compared.get(place);
    }

    List<Yardstick> leftOut() {
        return leftOut;
    }

    int needed() {
        return needed.size();
    }

    /** Tells which of the questions that are needed is asked now, from 1; more than are needed when it only checks. */
    int number() {
        return current.filter(needed::contains)
                .map(pair -> needed.indexOf(pair) + 1)
                .orElse(needed.size() + 1);
    }

    /** Takes the answer to the question asked now: how many times as much the first is worth as the second. */
    void answer(double times) {
        Pair pair = current.orElseThrow();
        answers = answers.with(new Answer(pair.first(), pair.second(), times));
        gone.push(pair);
        current = needed.stream().filter(each -> !answered(each)).findFirst();
    }

    private boolean answered(Pair pair) {
        return answers.answers().stream()
                .anyMatch(each -> each.first() == pair.first() && each.second() == pair.second());
    }

    boolean returnable() {
        return !gone.isEmpty();
    }

    /** Takes the last answer back and asks again. */
    void back() {
        ask(gone.pop());
    }

    private void ask(Pair pair) {
        answers = answers.without(pair.first(), pair.second());
        gone.remove(pair);
        current = Optional.of(pair);
    }

    boolean moreToAsk() {
        return answers.mostTelling().isPresent();
    }

    /** Asks about the pair that checks the answers most. */
    void askMore() {
        current = answers.mostTelling();
    }

    /** Asks once more about the answer that fits the others worst. */
    void askOddAgain() {
        odd().ifPresent(each -> ask(new Pair(each.first(), each.second())));
    }

    /** Finds the answer that pulls against the others, if one clearly does. */
    Optional<PairwiseComparison.Contradiction> odd() {
        return answers.oddOneOut()
                .filter(each -> apart(each) >= FAR_APART || consistency().ratio() > MOST_RATIO);
    }

    private static double apart(PairwiseComparison.Contradiction odd) {
        return Math.exp(Math.abs(Math.log(odd.stated() / odd.implied())));
    }

    /** Tells whether any answer was given that others could contradict. */
    boolean checked() {
        return answers.answers().size() > needed.size();
    }

    PairwiseComparison.Consistency consistency() {
        return answers.completed().consistency(RandomIndex.SAATY_1980);
    }

    /** Tells the points that follow: 100 for what matters most, at least 1 for whatever was asked about. */
    SortedMap<String, Double> points() {
        double[] priorities = answers.priorities();
        SortedMap<String, Double> raw = new TreeMap<>();
        leftOut.forEach(each -> raw.put(each.id(), 0.0));
        for (int i = 0; i < priorities.length; i++) {
            raw.put(compared.get(i).id(), priorities[i]);
        }
        SortedMap<String, Double> points = Yardsticks.swings(raw);
        compared.forEach(each -> points.merge(each.id(), 1.0, Math::max));
        return points;
    }
}
