package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.OutcomeChances;
import org.keelweigh.fit.FitScore;
import org.keelweigh.fit.PersonFit;
import org.keelweigh.haul.BagCarry;
import org.keelweigh.quantity.Speed;

/** Reads the measure of each criterion for each person off what was found out about a boat. */
final class Measurement {

    private static final double NEUTRAL_LIKING = 5;
    /** What is an effort in its bag, kilograms: gives the points of the row bag-mass in fit-rows.csv (estimate). */
    private static final double IN_BAG_LIMIT_KG = 25;

    private static final double NO_DRIVE = 100;
    private static final double IN_STOCK = 90;
    private static final double TO_ORDER = 65;
    private static final double USED_ONLY = 25;
    private static final int USUAL_WAIT_DAYS = 3;
    private static final int REPAIR_WAIT_DAYS = 7;
    private static final double UNKNOWN_POINTS = 70;

    private final Situation situation;
    private final Yardsticks yardsticks;
    private final Catalogues catalogues;
    private final BoatMeasurer.Evidence found;

    Measurement(Situation situation, Yardsticks yardsticks, Catalogues catalogues, BoatMeasurer.Evidence found) {
        this.situation = situation;
        this.yardsticks = yardsticks;
        this.catalogues = catalogues;
        this.found = found;
    }

    /** Tells for each person a measure for each criterion. */
    List<List<Double>> all() {
        List<List<Double>> all = new ArrayList<>();
        for (int person = 0; person < situation.people().size(); person++) {
            int place = person;
            all.add(yardsticks.all().stream()
                    .map(each -> measure(each.measure(), place))
                    .toList());
        }
        return all;
    }

    private double measure(Measure measure, int person) {
        return switch (measure) {
            case COST -> found.cost().presentValue();
            case REPAIR_RISK -> found.futures().repairSurprise();
            case WALK_RISK -> walkRisk();
            case EVIDENCE -> found.condition().progress().evidenceShare();
            case SPARES -> spares();
            case FIT_PERSON -> personFit(person).flatMap(Measurement::points).orElseGet(this::worstPerson);
            case FIT_WATER -> found.fit().waterPoints().orElse(UNKNOWN_POINTS);
            case STABILITY -> stability(person);
            case SPEED -> Speed.ofKmPerHour(found.fit().speed().kmPerH()).mPerS();
            case DELIGHT -> liking(person);
            case LIFT ->
                inBag()
                        ? found.cart().massKg() / IN_BAG_LIMIT_KG
                        : found.loading().get(person).liftRatio();
            case HAUL -> found.cart().haulers().get(person).effort();
            case ROOM -> found.fit().placePoints().orElse(UNKNOWN_POINTS);
            case WAIT -> daysToLaunch();
        };
    }

    private double walkRisk() {
        return 1
                - (1 - found.condition().hidden().stopChance())
                        * (1 - found.trust().listing().concern());
    }

    /** Support for parts by the check of it: what was found, or what is likely. Only a boat without a drive needs none. */
    private double spares() {
        if (found.boat().drive() == DriveKind.NONE) {
            return NO_DRIVE;
        }
        Optional<Check> check = catalogues.inspection().applicable(found.boat()).stream()
                .filter(each -> each.id().equals("drive-spares"))
                .findFirst();
        if (check.isEmpty()) {
            return UNKNOWN_POINTS;
        }
        Optional<Outcome> outcome = found.candidate().data().findings().stream()
                .filter(each -> each.check().equals("drive-spares"))
                .map(each -> each.outcome())
                .findFirst();
        if (outcome.isPresent()) {
            return sparesPoints(outcome.get());
        }
        OutcomeChances chances = found.belief().check("drive-spares").now();
        return chances.fine() * IN_STOCK + chances.minor() * TO_ORDER + chances.major() * USED_ONLY;
    }

    private static double sparesPoints(Outcome outcome) {
        return switch (outcome) {
            case FINE -> IN_STOCK;
            case MINOR -> TO_ORDER;
            case MAJOR -> USED_ONLY;
            case STOP -> 0;
            case NOT_FITTED -> NO_DRIVE;
        };
    }

    private Optional<PersonFit> personFit(int person) {
        int aboard = situation.paddlers().indexOf(situation.people().get(person));
        return aboard < 0 ? Optional.empty() : Optional.of(found.fit().people().get(aboard));
    }

    private static Optional<Double> points(PersonFit fit) {
        return fit.points().isPresent() ? Optional.of(fit.points().getAsDouble()) : Optional.empty();
    }

    private double worstPerson() {
        return found.fit().worstPerson().orElse(UNKNOWN_POINTS);
    }

    /** A person who does not paddle takes the margin of the paddler who has the least. */
    private double stability(int person) {
        return personFit(person)
                        .flatMap(fit -> fit.scored("stability"))
                        .map(FitScore.Scored::measure)
                        .orElseGet(() -> found.fit().people().stream()
                                .flatMap(fit -> fit.scored("stability").stream())
                                .mapToDouble(FitScore.Scored::measure)
                                .min()
                                .orElse(0))
                / 1000;
    }

    private double liking(int person) {
        return situation
                .people()
                .get(person)
                .id()
                .map(id -> found.candidate().data().liking().get(id.toString()))
                .map(Integer::doubleValue)
                .orElse(NEUTRAL_LIKING);
    }

    private boolean inBag() {
        return found.cart() instanceof BagCarry;
    }

    private double daysToLaunch() {
        Integer typed = found.candidate().data().daysToLaunch();
        if (typed != null) {
            return typed;
        }
        boolean repairs = found.condition().seriousRepairsLikely() > 0;
        return USUAL_WAIT_DAYS + (repairs ? REPAIR_WAIT_DAYS : 0);
    }
}
