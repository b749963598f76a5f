package org.keelweigh.decision.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;
import org.keelweigh.decision.robust.Segment;

class GroupTests {

    /** By hand. One person cares for the first column, the other for the second; the third is alike for all. */
    private static final double[][] VALUES = {{100, 0, 50}, {0, 100, 50}, {60, 60, 50}, {70, 40, 50}};

    private static final double[][] WEIGHTS = {{0.8, 0.1, 0.1}, {0.1, 0.5, 0.4}};

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    private static Group couple() {
        return Group.of(VALUES, WEIGHTS, new boolean[2][4]);
    }

    @Test
    void keepsEveryonesOwnRanking() {
        assertThat(couple().rankings().get(0).leader()).hasValue(0);
        assertThat(couple().rankings().get(1).leader()).hasValue(1);
    }

    @Test
    void findsTheCompromises() {
        Group couple = couple();
        // totals: first person 85, 15, 59, 65; second person 30, 70, 56, 47
        assertThat(couple.regret(0, 2)).isCloseTo(26, within(1e-9));
        assertThat(couple.regret(1, 2)).isCloseTo(14, within(1e-9));
        assertThat(couple.largestRegret(3)).isCloseTo(23, within(1e-9));
        assertThat(couple.leastRegret()).hasValue(3);
        assertThat(couple.maxMin()).hasValue(2);
        assertThat(couple.smallestTotal(2)).isCloseTo(56, within(1e-9));
        // mean totals 57.5, 42.5, 57.5, 56: a tie of the first and the third
        assertThat(couple.meanWeights().first()).containsExactly(0, 2);
        // Borda: first person 3, 0, 1, 2; second person 0, 3, 2, 1
        assertThat(couple.bordaPoints(0)).isEqualTo(3);
        assertThat(couple.borda()).hasValue(0);
        assertThat(couple.pareto()).containsExactly(0, 1, 2, 3);
    }

    @Test
    void neverProposesWhatOnePersonRulesOut() {
        boolean[][] ruledOut = new boolean[2][4];
        ruledOut[0][3] = true;
        ruledOut[1][0] = true;
        Group group = Group.of(VALUES, WEIGHTS, ruledOut);
        assertThat(group.commonChoices()).containsExactly(1, 2);
        assertThat(group.vetoed(3)).isTrue();
        assertThat(group.leastRegret()).hasValue(2);
        assertThat(group.meanWeights().leader()).hasValue(2);
        assertThat(group.maxMin()).hasValue(2);
        assertThat(group.pareto()).containsExactly(1, 2);
        // against the best common choice: 59 for the first person, who would like the vetoed 0 better
        assertThat(group.regret(0, 2)).isZero();
        assertThat(group.regret(0, 0)).isCloseTo(-26, within(1e-9));
        assertThat(group.rankings().get(0).leader()).hasValue(0);
    }

    @Test
    void proposesNothingWhenNothingIsLeft() {
        boolean[][] ruledOut = {{true, true, false, false}, {false, false, true, true}};
        Group group = Group.of(VALUES, WEIGHTS, ruledOut);
        assertThat(group.leastRegret()).isEmpty();
        assertThat(group.maxMin()).isEmpty();
        assertThat(group.borda()).isEmpty();
        assertThat(group.meanWeights().leader()).isEmpty();
        assertThat(group.pareto()).isEmpty();
        assertThat(group.betweenTwo(0, 1)).isEmpty();
        assertThat(group.regret(0, 0)).isZero();
    }

    @Test
    void breaksTiesOfTheLargestRegretByTheSum() {
        double[][] values = {{100, 0, 0}, {0, 100, 0}, {0, 0, 100}, {50, 50, 50}, {50, 50, 90}};
        double[][] weights = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        assertThat(Group.of(values, weights, new boolean[3][5]).leastRegret()).hasValue(4);
    }

    @Test
    void findsNoFightWhereNothingDiffers() {
        List<Contention> contentions = couple().contentions();
        assertThat(contentions).extracting(Contention::criterion).containsExactly(0, 1, 2);
        assertThat(contentions.getFirst().points()).isCloseTo(70, within(1e-9));
        assertThat(contentions.getLast().highestShare()).isEqualTo(0.4);
        assertThat(contentions.getLast().points()).isZero();
    }

    // E. Forman and K. Peniwati, EJOR 108:165-169, 1998 (from memory): arithmetic mean of priorities
    @Test
    void ranksByTheArithmeticMeanOfWeights() {
        double[][] units = {{100, 0, 0}, {0, 100, 0}, {0, 0, 100}};
        Group group = Group.of(units, new double[][] {{0.5, 0.3, 0.2}, {0.2, 0.3, 0.5}}, new boolean[2][3]);
        assertThat(group.meanWeights().total(0)).isCloseTo(35, within(1e-12));
        assertThat(group.meanWeights().total(1)).isCloseTo(30, within(1e-12));
        assertThat(group.meanWeights().first()).containsExactly(0, 2);
    }

    @Test
    void tellsWhoWinsAsTheSayMovesFromOneToTheOther() {
        // lines 85 to 30, 15 to 70, 59 to 56, 65 to 47: 0 meets 2 at 26/52, 2 meets 1 at 44/58
        List<Segment> segments = couple().betweenTwo(0, 1);
        assertThat(segments).extracting(Segment::winner).containsExactly(0, 2, 1);
        assertThat(segments.get(0).to()).isCloseTo(0.5, within(1e-12));
        assertThat(segments.get(1).to()).isCloseTo(44 / 58.0, within(1e-12));
    }

    @Property
    void keepsEveryCompromiseAmongTheCommonChoices(@ForAll("cases") Case all) {
        double[] equal = new double[all.criteria()];
        Arrays.fill(equal, 1.0 / all.criteria());
        Group group = Group.of(all.values(), new double[][] {all.weights(), equal}, new boolean[][] {
            all.ruledOut(), new boolean[all.alternatives()]
        });
        List<Integer> common = group.commonChoices();
        assertThat(group.leastRegret().isPresent()).isEqualTo(!common.isEmpty());
        group.leastRegret().ifPresent(a -> assertThat(common).contains(a));
        group.maxMin().ifPresent(a -> assertThat(common).contains(a));
        group.borda().ifPresent(a -> assertThat(common).contains(a));
        assertThat(common).containsAll(group.pareto());
        for (int a : common) {
            assertThat(group.largestRegret(a)).isGreaterThanOrEqualTo(0);
            assertThat(group.largestRegret(a))
                    .isGreaterThanOrEqualTo(
                            group.largestRegret(group.leastRegret().getAsInt()) - 1e-9);
        }
    }

    @Property
    void agreesWithEveryoneWhenAllWeighTheSame(@ForAll("cases") Case all) {
        Group group = Group.of(all.values(), new double[][] {all.weights(), all.weights()}, new boolean[][] {
            all.ruledOut(), all.ruledOut()
        });
        var own = AdditiveModel.rank(all.values(), all.weights(), all.ruledOut());
        assertThat(group.meanWeights().order()).isEqualTo(own.order());
        assertThat(group.leastRegret()).isEqualTo(own.leader());
        assertThat(group.borda()).isEqualTo(own.leader());
        assertThat(group.contentions()).allSatisfy(c -> assertThat(c.points()).isZero());
    }

    @Test
    void rejectsPeopleWithoutWeights() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Group.of(VALUES, new double[0][], new boolean[0][]))
                .withMessageContaining("1 or more people");
        assertThatIllegalArgumentException().isThrownBy(() -> Group.of(VALUES, WEIGHTS, new boolean[1][4]));
    }
}
