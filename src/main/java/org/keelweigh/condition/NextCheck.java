package org.keelweigh.condition;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A check not made yet and what making it is worth.
 *
 * @param check the check
 * @param worth money that knowing its outcome can save: {@code s·(Σ p·cost + 300·p(stop))}, USD, with {@code s} the chance
 *     that a person on the spot finds the fault
 * @param worthPerMinute the same for each minute of somebody's time
 */
public record NextCheck(Check check, double worth, double worthPerMinute) {

    // A water test costs a trip to the water, which only a boat that passed the dry checks is worth.
    private static final Comparator<NextCheck> DRY_FIRST_THEN_WORTH = Comparator.comparing(
                    (NextCheck each) -> each.check.water() == WaterNeed.NEEDS)
            .thenComparing(NextCheck::worthPerMinute, Comparator.reverseOrder())
            .thenComparing(each -> each.check.id());

    static List<NextCheck> inOrder(
            InspectionCatalogue catalogue, List<Check> unmade, Function<Check, OutcomeChances> chances) {
        return unmade.stream()
                .map(check -> of(catalogue, check, chances.apply(check)))
                .sorted(DRY_FIRST_THEN_WORTH)
                .toList();
    }

    private static NextCheck of(InspectionCatalogue catalogue, Check check, OutcomeChances chances) {
        double atStake = chances.stop() * Progress.STOP_WORTH;
        for (Grade grade : check.grades()) {
            atStake += chances.of(grade.outcome()) * grade.repairCost().likely();
        }
        Method onTheSpot = check.water() == WaterNeed.NEEDS ? Method.ON_WATER : Method.TOUCHED;
        double worth = atStake * catalogue.sensitivity(check, onTheSpot);
        return new NextCheck(check, worth, worth / check.minutes());
    }
}
