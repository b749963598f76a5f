package org.keelweigh.ui.pairs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.appraisal.Yardsticks;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.decision.weight.PairAnswers.Pair;
import org.keelweigh.decision.weight.PairwiseComparison;

class PairQuestionsTests {

    private static final List<Yardstick> ALL =
            Yardsticks.read(Catalogue.shipped()).all();

    private static PairQuestions among(Object... idsAndPoints) {
        Map<String, Double> points = new HashMap<>();
        for (int i = 0; i < idsAndPoints.length; i += 2) {
            points.put((String) idsAndPoints[i], ((Number) idsAndPoints[i + 1]).doubleValue());
        }
        return new PairQuestions(ALL, points);
    }

    private static String asked(PairQuestions questions) {
        Pair pair = questions.current().orElseThrow();
        return questions.yardstick(pair.first()).id() + " "
                + questions.yardstick(pair.second()).id();
    }

    @Test
    void asksNoMoreThanIsNeededAndLikeAgainstLikeFirst() {
        PairQuestions questions = among("cost", 100, "lift", 80, "haul", 60, "speed", 40, "stability", 50);
        Set<String> seen = new HashSet<>();

        for (int number = 1; questions.current().isPresent(); number++) {
            assertThat(questions.number()).isEqualTo(number);
            seen.add(asked(questions));
            questions.answer(1);
        }

        assertThat(questions.needed()).isEqualTo(4);
        assertThat(seen).containsExactlyInAnyOrder("stability speed", "lift haul", "cost lift", "lift stability");
    }

    @Test
    void turnsAnswersIntoPointsAndLeavesOutWhatHasNone() {
        PairQuestions questions = among("cost", 100, "lift", 80, "haul", 60);
        questions.answer(3); // lift against haul
        questions.answer(0.5); // cost against lift

        assertThat(questions.points())
                .hasSize(ALL.size())
                .containsEntry("lift", 100.0)
                .containsEntry("cost", 50.0)
                .containsEntry("haul", 33.0)
                .containsEntry("wait", 0.0);
        assertThat(questions.leftOut()).hasSize(ALL.size() - 3);
    }

    @Test
    void keepsAtLeastOnePointForWhateverWasAskedAbout() {
        PairQuestions questions = among("cost", 100, "lift", 80, "haul", 60, "room", 50, "wait", 40);
        while (questions.current().isPresent()) {
            questions.answer(5);
        }

        assertThat(questions.points()).containsEntry("cost", 100.0).containsEntry("wait", 1.0);
    }

    @Test
    void asksAboutEverythingWhereNothingHasPoints() {
        assertThat(among().needed()).isEqualTo(ALL.size() - 1);
    }

    @Test
    void takesTheLastAnswerBack() {
        PairQuestions questions = among("cost", 100, "lift", 80, "haul", 60);
        String first = asked(questions);
        assertThat(questions.returnable()).isFalse();
        questions.answer(3);
        questions.back();

        assertThat(asked(questions)).isEqualTo(first);
        assertThat(questions.returnable()).isFalse();
    }

    @Test
    void findsAnAnswerThatPullsAgainstTheOthersAndAsksItAgain() {
        PairQuestions questions = among("cost", 100, "lift", 80, "haul", 60);
        questions.answer(3); // lift against haul
        questions.answer(3); // cost against lift
        assertThat(questions.checked()).isFalse();
        assertThat(questions.odd()).isEmpty();

        questions.askMore();
        assertThat(asked(questions)).isEqualTo("cost haul");
        assertThat(questions.number()).isGreaterThan(questions.needed());
        questions.answer(1.0 / 3); // 9 would fit

        PairwiseComparison.Contradiction odd = questions.odd().orElseThrow();
        assertThat(odd.stated() / odd.implied()).isNotCloseTo(1, within(0.5));
        assertThat(questions.consistency().ratio()).isGreaterThan(0.10);

        questions.askOddAgain();
        assertThat(questions.current()).isPresent();
    }

    @Test
    void isContentWithAnswersThatNearlyAgree() {
        PairQuestions questions = among("cost", 100, "lift", 80, "haul", 60);
        questions.answer(1.5);
        questions.answer(1.5);
        questions.askMore();
        questions.answer(3); // 2.25 would fit exactly

        assertThat(questions.checked()).isTrue();
        assertThat(questions.odd()).isEmpty();
        assertThat(questions.moreToAsk()).isFalse();
    }

    @Test
    void saysRatiosInWords() {
        assertThat(HowMuch.compared("A", "B", 3)).isEqualTo("A is worth about 3 times as much as B");
        assertThat(HowMuch.compared("A", "B", 0.4)).isEqualTo("B is worth about 2.5 times as much as A");
        assertThat(HowMuch.compared("A", "B", 1.1)).isEqualTo("A is worth about as much as B");
    }
}
