package org.keelweigh.decision.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.weight.PairAnswers.Answer;
import org.keelweigh.decision.weight.PairAnswers.Pair;

class PairAnswersTests {

    private static PairAnswers answers(int size, Answer... answers) {
        PairAnswers all = PairAnswers.none(size);
        for (Answer each : answers) {
            all = all.with(each);
        }
        return all;
    }

    @Test
    void followsAChainOfAnswers() {
        PairAnswers chain = answers(3, new Answer(0, 1, 2), new Answer(1, 2, 3));

        // Closed form: 6 : 3 : 1.
        assertThat(chain.priorities()).containsExactly(new double[] {0.6, 0.3, 0.1}, within(1e-12));
        assertThat(chain.completed().consistency(RandomIndex.SAATY_1980).ratio())
                .isCloseTo(0, within(1e-9));
        assertThat(chain.oddOneOut()).isEmpty();
    }

    @Test
    void readsAnAnswerEitherWayRound() {
        PairAnswers turned = answers(3, new Answer(1, 0, 0.5), new Answer(2, 1, 1.0 / 3));

        assertThat(turned.priorities()).containsExactly(new double[] {0.6, 0.3, 0.1}, within(1e-12));
    }

    @Test
    void hasNoPrioritiesUntilAllAreLinked() {
        PairAnswers apart = answers(4, new Answer(0, 1, 2), new Answer(2, 3, 2));

        assertThat(apart.linked()).isFalse();
        assertThatIllegalStateException().isThrownBy(apart::priorities);
        assertThat(apart.with(new Answer(3, 0, 1)).linked()).isTrue();
    }

    @Test
    void splitsAContradictionInEqualFactors() {
        // 1 : 1 : 1 round a circle, but the last answer says 8: each is stretched by the cube root of 8.
        PairAnswers circle = answers(3, new Answer(0, 1, 1), new Answer(1, 2, 1), new Answer(0, 2, 8));
        double[] priorities = circle.priorities();

        assertThat(priorities[0] / priorities[1]).isCloseTo(2, within(1e-12));
        assertThat(priorities[1] / priorities[2]).isCloseTo(2, within(1e-12));
    }

    @Test
    void namesTheAnswerThatDoesNotFitTheOthers() {
        PairAnswers all = answers(
                4,
                new Answer(0, 1, 2),
                new Answer(1, 2, 2),
                new Answer(2, 3, 2),
                new Answer(0, 2, 4),
                new Answer(1, 3, 4),
                new Answer(0, 3, 0.5));

        PairwiseComparison.Contradiction odd = all.oddOneOut().orElseThrow();
        assertThat(List.of(odd.first(), odd.second())).containsExactly(0, 3);
        assertThat(odd.stated()).isEqualTo(0.5);
        assertThat(odd.implied()).isCloseTo(8, within(1e-9));
        assertThat(all.completed().consistency(RandomIndex.SAATY_1980).ratio()).isGreaterThan(0.10);
    }

    @Test
    void asksAboutThePairThatIsLinkedTheLongestWayRound() {
        PairAnswers chain = answers(4, new Answer(0, 1, 1), new Answer(1, 2, 1), new Answer(2, 3, 1));

        assertThat(chain.mostTelling()).hasValue(new Pair(0, 3));
        assertThat(chain.with(new Answer(0, 3, 1)).mostTelling()).hasValue(new Pair(0, 2));
        assertThat(answers(2, new Answer(0, 1, 1)).mostTelling()).isEmpty();
    }

    @Test
    void replacesAnEarlierAnswerAboutTheSamePair() {
        PairAnswers changed = answers(2, new Answer(0, 1, 3), new Answer(1, 0, 1));

        assertThat(changed.answers()).containsExactly(new Answer(1, 0, 1));
        assertThat(changed.priorities()).containsExactly(new double[] {0.5, 0.5}, within(1e-12));
    }

    @Test
    void refusesWhatIsNoJudgement() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Answer(1, 1, 2))
                .withMessageContaining("2 criteria");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Answer(0, 1, 0))
                .withMessageContaining("above 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairAnswers.none(1))
                .withMessageContaining("At least 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairAnswers.none(2).with(new Answer(0, 2, 1)))
                .withMessageContaining("0 to 1");
    }

    /** With every pair answered, least squares of the logarithms are the geometric means of the rows. */
    @Property(tries = 100)
    void agreesWithGeometricMeansOnceEveryPairIsAnswered(
            @ForAll @IntRange(min = 2, max = 8) int size, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        PairAnswers all = PairAnswers.none(size);
        for (int i = 0; i < size; i++) {
            for (int j = i + 1; j < size; j++) {
                all = all.with(new Answer(i, j, Math.exp(random.nextGaussian())));
            }
        }

        assertThat(all.priorities()).containsExactly(all.completed().geometricMeans(), within(1e-9));
        assertThat(all.mostTelling()).isEmpty();
    }

    /** Answers that follow from weights give them back, whichever pairs are asked, as long as they are linked. */
    @Property(tries = 100)
    void givesTheWeightsBackThatTheAnswersFollowFrom(
            @ForAll @IntRange(min = 2, max = 14) int size, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        double[] weights = random.doubles(size, 0.05, 1).toArray();
        double sum = Arrays.stream(weights).sum();
        PairAnswers some = PairAnswers.none(size);
        for (int i = 1; i < size; i++) {
            int other = random.nextInt(i);
            some = some.with(new Answer(i, other, weights[i] / weights[other]));
        }
        for (int more = 0; more < 3; more++) {
            if (some.mostTelling().isPresent()) {
                Pair pair = some.mostTelling().orElseThrow();
                some = some.with(
                        new Answer(pair.first(), pair.second(), weights[pair.first()] / weights[pair.second()]));
            }
        }

        double[] expected = Arrays.stream(weights).map(each -> each / sum).toArray();
        assertThat(some.priorities()).containsExactly(expected, within(1e-9));
        some.oddOneOut()
                .ifPresent(odd -> assertThat(odd.stated() / odd.implied()).isCloseTo(1, within(1e-6)));
    }
}
