package org.keelweigh.exchange;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.keelweigh.appraisal.Answer;
import org.keelweigh.appraisal.Answers;
import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.appraisal.CatchUp;
import org.keelweigh.appraisal.CheckAdvisor;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Offers;
import org.keelweigh.appraisal.Outlook;
import org.keelweigh.appraisal.Participant;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.SecondOpinions;
import org.keelweigh.appraisal.Tie;
import org.keelweigh.appraisal.Yardstick;
import org.keelweigh.condition.CauseAccount;

/**
 * The whole answer for a shortlist, gathered once for the forms it is printed in.
 *
 * @param measured the boats measured
 * @param views what each perspective makes of them
 * @param causes for each boat, in their order: how likely each hidden cause is
 * @param oneCart which cart serves whichever boat wins, as a sentence
 */
record WholeAnswer(Measured measured, List<View> views, List<List<CauseAccount>> causes, String oneCart) {

    /**
     * The boats from one perspective.
     *
     * @param perspective whose it is
     * @param answer the answer in words
     * @param confidence the chances of coming first
     * @param offers what to offer for each boat
     * @param next what to check next
     * @param rivals how little the weights would have to change for each other boat to come first
     * @param voices what other methods say
     */
    record View(
            Perspective perspective,
            Answer answer,
            Confidence confidence,
            List<BoatOffer> offers,
            NextChecks next,
            List<CatchUp> rivals,
            List<SecondOpinions.Voice> voices) {

        /** Lists the boats that are left to choose from, the best first. */
        List<Integer> choices() {
            return perspective.ranking().order().stream()
                    .filter(boat -> !perspective.ruledOut(boat))
                    .toList();
        }
    }

    static WholeAnswer of(Measured measured, Catalogues catalogues) {
        Outlook outlook = Outlook.of(measured);
        boolean some = !measured.boats().isEmpty();
        List<View> views = some
                ? measured.perspectives().stream()
                        .map(each -> view(measured, outlook, each, catalogues))
                        .toList()
                : List.of();
        String cart = some ? measured.oneCart(catalogues.haul()) : "";
        List<List<CauseAccount>> causes = measured.boats().stream()
                .map(boat -> CauseAccount.of(catalogues.causes(), boat.belief()))
                .toList();
        return new WholeAnswer(measured, views, causes, cart);
    }

    private static View view(Measured measured, Outlook outlook, Perspective perspective, Catalogues catalogues) {
        Confidence confidence = outlook.confidence(perspective);
        NextChecks next = CheckAdvisor.advise(catalogues, outlook, perspective);
        return new View(
                perspective,
                Answers.of(measured, perspective, Optional.of(confidence), Optional.of(next)),
                confidence,
                Offers.of(outlook, perspective, catalogues),
                next,
                CatchUp.of(measured, perspective),
                SecondOpinions.of(measured, perspective));
    }

    /** Tells a boat's measure on a criterion; empty where it differs from person to person and all look together. */
    OptionalDouble measure(Perspective perspective, int boat, int criterion) {
        Yardstick yardstick = measured.yardsticks().all().get(criterion);
        Optional<Integer> person = place(perspective);
        if (yardstick.personal() && person.isEmpty()) {
            return OptionalDouble.empty();
        }
        BoatReport report = measured.boats().get(boat);
        return OptionalDouble.of(report.measures().get(person.orElse(0)).get(criterion));
    }

    private Optional<Integer> place(Perspective perspective) {
        List<Participant> people = measured.situation().people();
        boolean together = measured.situation().deciders().size() > 1
                && perspective.person().isEmpty();
        return together
                ? Optional.empty()
                : IntStream.range(0, people.size())
                        .boxed()
                        .filter(each -> people.get(each).id().equals(perspective.person()))
                        .findFirst();
    }

    /** Tells the price at which a boat ties with the best other; empty where no price makes them tie. */
    static OptionalDouble tie(BoatOffer offer) {
        return offer instanceof BoatOffer.Offer made && made.tie() instanceof Tie.At(double price)
                ? OptionalDouble.of(price)
                : OptionalDouble.empty();
    }
}
