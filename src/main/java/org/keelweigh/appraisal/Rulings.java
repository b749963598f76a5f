package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.boat.Figure;
import org.keelweigh.boat.identity.IdentityVerdict;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SeriousFinding;
import org.keelweigh.fit.FitScore;
import org.keelweigh.fit.PersonFit;
import org.keelweigh.shortlist.StoragePlace;

/** Looks which hard rules a boat breaks; they come before any value is added up. */
final class Rulings {

    private static final double FULLEST = 0.9;
    private static final double MOST_CONCERN = 0.3;
    private static final double MOST_CASH_SHARE = 1.15;
    private static final double MOST_REPAIR_SHARE = 0.45;
    private static final double MOST_LIFT_RATIO = 1.5;
    private static final int CAN_KILL = 4;

    private final Situation situation;
    private final BoatMeasurer.Evidence found;
    private final List<Ruling> rulings = new ArrayList<>();

    Rulings(Situation situation, BoatMeasurer.Evidence found) {
        this.situation = situation;
        this.found = found;
    }

    List<Ruling> all() {
        findings();
        trust();
        fit();
        transport();
        money();
        return List.copyOf(rulings);
    }

    private void findings() {
        for (SeriousFinding each : found.condition().stops()) {
            Rule rule =
                    each.check().equals("hin-read") ? Rule.IDENTITY : seller(each) ? Rule.SELLER : Rule.STOP_FINDING;
            add(
                    rule,
                    each.reason(),
                    "Have it put right or disproved by a repairer, in writing, before any money moves.");
        }
        for (SeriousFinding each : found.condition().unsafe()) {
            if (each.safety() >= CAN_KILL && !found.condition().stops().contains(each)) {
                add(Rule.UNSAFE, each.reason(), "Have it mended and looked at again before anybody goes afloat.");
            }
        }
        boolean driveFault = found.condition().repairs().stream()
                .anyMatch(line -> line.group().code().startsWith("drive") && line.outcome() == Outcome.MAJOR);
        boolean noParts = found.candidate().data().findings().stream()
                .anyMatch(each -> each.check().equals("drive-spares") && each.outcome() == Outcome.STOP);
        if (driveFault && noParts) {
            add(
                    Rule.DRIVE_PARTS,
                    "The drive has a fault, and parts for it are no longer to be had.",
                    "Find a used drive that fits this hull and add its price.");
        }
    }

    private static boolean seller(SeriousFinding finding) {
        return List.of("owner-papers", "stolen-check", "photo-match", "viewing-terms")
                .contains(finding.check());
    }

    private void trust() {
        if (found.trust().identity().verdict() == IdentityVerdict.RULED_OUT) {
            add(
                    Rule.IDENTITY,
                    String.join(" ", found.trust().identity().reasons()),
                    String.join(" ", found.trust().identity().settles()));
        }
        double concern = found.trust().listing().concern();
        if (concern > MOST_CONCERN) {
            String remedy = found.trust()
                    .listing()
                    .bestProof()
                    .map(proof -> "Ask for this first: "
                            + proof.signal().proof().orElse(proof.signal().phrase()) + ". It would bring the chance to "
                            + situation.display().percent(proof.concernAfter()) + ".")
                    .orElse("Walk away from this one.");
            add(Rule.FRAUD, found.trust().listing().sentence(), remedy);
        }
    }

    /** What was only assumed about a boat never rules it out. */
    private void fit() {
        for (PersonFit person : found.fit().people()) {
            person.dealBreakers().forEach(score -> fit(person.paddler().name(), score));
        }
    }

    private void fit(String person, FitScore.Scored score) {
        switch (score.row().id()) {
            case "capacity-used" ->
                add(
                        Rule.CAPACITY,
                        person + " with gear would use " + situation.display().percent(score.measure())
                                + " of its rated load; " + situation.display().percent(FULLEST) + " is the most.",
                        "Take less gear, or check the rating on the plate.");
            case "water-match" ->
                add(
                        Rule.WATER,
                        "A " + found.boat().kind().label() + " is not made for a "
                                + situation.mainWater().label() + ".",
                        "Choose calmer water as your main water, or another kind of boat.");
            case "store-length", "roof-load", "alone-lift", "car-length" -> {
                // told below, with the figures in people's units
            }
            default ->
                add(
                        Rule.FIT,
                        person + ": " + score.dealBreaker().orElse(""),
                        "Sit in it and try; if it fits after all, say so here.");
        }
    }

    private void transport() {
        boolean carried = found.boat().kind().rigid() && found.boat().riggedMassKg() > 0;
        boolean alone = situation.people().size() < 2;
        if (carried
                && known(found.boat().bareMassKg())
                && alone
                && found.loading().getFirst().liftRatio() > MOST_LIFT_RATIO) {
            add(
                    Rule.LIFT,
                    found.loading().getFirst().advice(),
                    "Name a second person who helps, or plan a loading aid or a trailer.");
        }
        boolean canTow = Boolean.TRUE.equals(situation.trip().car().canTow());
        if (carried
                && known(found.boat().bareMassKg())
                && !canTow
                && found.rack().ratio().orElse(0) > 1) {
            add(
                    Rule.ROOF,
                    "On the roof it weighs "
                            + situation.display().mass(found.rack().loadKg())
                            + " with the rack, and the roof may carry "
                            + situation.display().mass(found.rack().limitKg().orElse(0)) + ".",
                    "Use a trailer or another car.");
        }
        Double room = situation.trip().storageLengthM();
        double length = found.boat().lengthM().value();
        boolean fixed = situation.trip().storage() == null || situation.trip().storage() == StoragePlace.INDOORS;
        if (carried && known(found.boat().lengthM()) && room != null && fixed && length > room) {
            add(
                    Rule.STORAGE,
                    "It is " + situation.display().length(length) + " long, and its room "
                            + situation.display().length(room) + ".",
                    "Find another place for it, such as a covered wall outside, and say so.");
        }
    }

    private static boolean known(Figure figure) {
        return !figure.isAssumed();
    }

    private void money() {
        Double budget = situation.trip().budget();
        double dayOne = BoatReport.dayOneCash(found.cost());
        if (budget != null && budget > 0 && dayOne > MOST_CASH_SHARE * budget) {
            add(
                    Rule.CASH,
                    "Before the first launch it takes " + situation.display().money(dayOne) + ", and you have "
                            + situation.display().money(budget) + ".",
                    "Bargain, or leave out kit that can wait.");
        }
        double repairs = found.condition().seriousRepairsLikely() * situation.priceFactor();
        if (repairs > MOST_REPAIR_SHARE * Math.max(1, found.fair().amount()) && repairs > 0) {
            add(
                    Rule.REPAIRS,
                    "Its serious repairs cost about " + situation.display().money(repairs)
                            + ", and such a boat usually goes for "
                            + situation.display().money(found.fair().amount()) + ".",
                    "Get a written quote, or a price that takes the repairs off.");
        }
    }

    private void add(Rule rule, String reason, String remedy) {
        if (rulings.stream()
                .noneMatch(each -> each.rule() == rule && each.reason().equals(reason))) {
            rulings.add(new Ruling(
                    rule,
                    reason,
                    remedy,
                    Optional.ofNullable(found.candidate().data().liftedRulings().get(rule.code()))));
        }
    }
}
