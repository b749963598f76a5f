package org.keelweigh.decision.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.decision.AdditiveModel;
import org.keelweigh.decision.Cases;
import org.keelweigh.decision.Cases.Case;

class BordaTests {

    @Provide
    Arbitrary<Case> cases() {
        return Cases.cases();
    }

    // Tennessee: a much-used profile of 100 voters (profile published, totals recomputed).
    // Cycle and sixty (Condorcet 1785, as told by H.P. Young, Am. Pol. Sci. Rev. 82:1231-1244, 1988; from memory).
    @ParameterizedTest
    @CsvSource({
        "MNCK, 42 MNCK 26 NCKM 15 CKNM 17 KCNM,        126 194 173 107",
        "ABC,  25 ABC 40 BCA 35 CAB,                   85 105 110",
        "ABC,  23 ABC 17 BCA 2 BAC 10 CAB 8 CBA,       58 69 53"
    })
    void countsPublishedProfiles(String alternatives, String profile, String expected) {
        double[] points = new double[alternatives.length()];
        String[] words = profile.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            double[] one = Borda.points(totals(alternatives, words[i + 1]), new boolean[points.length]);
            for (int a = 0; a < points.length; a++) {
                points[a] += Integer.parseInt(words[i]) * one[a];
            }
        }
        assertThat(points)
                .containsExactly(Arrays.stream(expected.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
    }

    private static double[] totals(String alternatives, String order) {
        return alternatives.chars().mapToDouble(a -> -order.indexOf(a)).toArray();
    }

    @Test
    void givesHalfAPointForATieAndNothingToTheRuledOut() {
        assertThat(Borda.points(new double[] {5, 5, 1, 9}, new boolean[] {false, false, false, true}))
                .containsExactly(1.5, 1.5, 0, 0);
    }

    @Property
    void handsOutOnePointPerPair(@ForAll("cases") Case all) {
        double[] totals = AdditiveModel.totals(all.values(), all.weights());
        long allowed = IntStream.range(0, totals.length)
                .filter(a -> !all.ruledOut()[a])
                .count();
        assertThat(Arrays.stream(Borda.points(totals, all.ruledOut())).sum()).isEqualTo(allowed * (allowed - 1) / 2.0);
    }
}
