package org.keelweigh.appraisal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.Person;

/** The words of an answer: values and margins are chosen by hand, so the sentences can be too. */
class AnswersTests {

    private static final Measured ALIKE = Samples.threeAlike();

    private static Answer answer(double[][] columns, boolean... ruledOut) {
        return Answers.of(ALIKE, Samples.perspective(ALIKE, columns, ruledOut));
    }

    @Test
    void callsTwoEqualBoatsLevelAndNamesNoBorder() {
        Answer answer = answer(new double[][] {{60, 60}, {60, 60}, {20, 20}});

        assertThat(answer.headline()).isEqualTo("A and B are level");
        assertThat(answer.strength()).isEqualTo(Answer.Strength.OPEN);
        assertThat(answer.sentences()).anyMatch(each -> each.equals("Nothing that you weigh tells them apart."));
        assertThat(answer.changes()).noneMatch(each -> each.contains("more than") || each.contains("less than"));
    }

    /** Only the draws of what may be hidden differ between two boats of the same facts. */
    @Test
    void neverTakesTheNoiseOfTheDrawsForAReason() {
        Measured same = Samples.measured(
                List.of(),
                Samples.priced("A", BoatKind.SIT_ON_TOP, 500),
                Samples.priced("B", BoatKind.SIT_ON_TOP, 500));

        Answer answer = Answers.of(same, same.perspectives().getFirst());

        assertThat(answer.headline()).endsWith(" are level");
        assertThat(answer.sentences()).noneMatch(each -> each.contains("repair surprise"));
    }

    @Test
    void saysWhichBoatNoWeightsPutFirst() {
        // C is worth less than A on both criteria; B has the second one to itself
        Answer answer = answer(new double[][] {{90, 40}, {50, 70}, {60, 30}});

        assertThat(answer.changes()).last().isEqualTo("No weights at all would put C first alone.");
    }

    @Test
    void leavesOutBordersThatRoundToNought() {
        // B overtakes A where the first criterion counts for less than 40 / 100.2, and never by less than half a
        // percent
        Answer near = answer(new double[][] {{60.2, 0}, {0, 60}, {0, 0}});

        assertThat(near.changes()).noneMatch(each -> each.contains("less than 50 %"));
        assertThat(answer(new double[][] {{80, 0}, {0, 60}, {0, 0}}).changes())
                .anyMatch(each -> each.startsWith("B would lead if") && each.contains("less than 43 %"));
    }

    @Test
    void judgesHowCloseItIsByTheChanceOfBeingBestAlone() {
        Measured measured = Samples.measured(
                List.of(Samples.person("Ann", "cost")),
                Samples.priced("Cheap", BoatKind.SIT_ON_TOP, 500),
                Samples.priced("Dear", BoatKind.SIT_ON_TOP, 560));
        Perspective perspective = measured.perspectives().getFirst();
        Confidence confidence = Outlook.of(measured).confidence(perspective);
        int leader = perspective.ranking().leader().orElseThrow();

        Answer answer = Answers.of(measured, perspective, Optional.of(confidence), Optional.empty());

        assertThat(answer.strength()).isEqualTo(confidence.strength(leader));
        assertThat(answer.headline())
                .matches(
                        confidence.strength(leader) == Answer.Strength.OPEN
                                ? "Cheap and Dear are too close to call"
                                : "Cheap leads");
        assertThat(perspective.ranking().margin().orElseThrow()).isLessThan(4);
        assertThat(answer.sentences()).anyMatch(each -> each.startsWith("Fewer than 4 points lie between them"));
    }

    @Test
    void doesNotCallOneBoatTheOnlyOneLeft() {
        Measured one = Samples.measured(List.of(), Samples.priced("One", BoatKind.SIT_ON_TOP, 500));
        Perspective perspective = one.perspectives().getFirst();

        assertThat(Answers.of(one, perspective).headline()).isEqualTo("One is the only boat here");
        assertThat(perspective.stability()).isEmpty();
        assertThat(answer(new double[][] {{60, 60}, {50, 50}, {20, 20}}, false, true, true)
                        .headline())
                .isEqualTo("A is the only one left");
    }

    @Test
    void saysThatNotEverybodyCanGoAtOnce() {
        List<Person> couple = List.of(Samples.person("Ann", "cost"), Samples.person("Ben", "speed"));
        Measured solo = Samples.measured(couple, Samples.priced("Solo", BoatKind.SIT_ON_TOP, 500));

        assertThat(Answers.of(solo, solo.perspectives().getFirst()).sentences())
                .contains("Solo has one seat, so the two of you cannot both go at once.");
    }

    @Test
    void tiesAtNoPriceWhereCostHasNoWeight() {
        Measured measured = Samples.measured(
                List.of(Samples.person("Ann", "speed")),
                Samples.priced("One", BoatKind.SIT_ON_TOP, 500),
                Samples.priced("Two", BoatKind.SIT_ON_TOP, 900));

        assertThat(PriceTies.of(measured, measured.perspectives().getFirst()))
                .extracting(PriceTies.PriceTie::sentence)
                .allMatch(each -> each.startsWith("Cost has no weight here"));
    }

    @ParameterizedTest
    @CsvSource({
        "0, hardly any",
        "0.004, hardly any",
        "0.049, 5 of 100",
        "0.05, 5 of 100",
        "0.06, 6 of 100",
        "0.094, 9 of 100",
        "0.1, 1 of 10",
        "0.34, 3 of 10",
        "0.9, 9 of 10",
        "0.91, 91 of 100",
        "0.994, 99 of 100",
        "0.996, nearly all"
    })
    void tellsChancesWithoutAJump(double chance, String words) {
        assertThat(Confidence.inWords(chance)).isEqualTo(words);
    }

    /** What the one is ahead in reads the same from either side, its own measure first. */
    @Test
    void tellsTheMeasureOfTheBoatThatIsAheadFirst() {
        Measured measured = Samples.measured(
                List.of(),
                Samples.priced("Light", BoatKind.SIT_ON_TOP, 1500),
                Samples.priced("Cheap", BoatKind.PEDAL_KAYAK, 300));
        Reasons reasons = new Reasons(measured, measured.perspectives().getFirst());

        String forward = reasons.of(0, 1);
        String backward = reasons.of(1, 0);

        assertThat(forward).startsWith("It is ahead in ");
        assertThat(forward.substring(forward.lastIndexOf(" is ahead in ")))
                .isEqualTo(backward.substring(backward.indexOf(" is ahead in "), backward.indexOf(";")) + ".");
    }
}
