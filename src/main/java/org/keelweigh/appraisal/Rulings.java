package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.keelweigh.boat.identity.IdentityVerdict;
import org.keelweigh.condition.ListingAssessment;
import org.keelweigh.condition.ListingVerdict;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SeriousFinding;
import org.keelweigh.fit.FitScore;
import org.keelweigh.fit.PersonFit;

/**
 * Looks which hard rules a boat breaks; they come before any value is added up. A rule stands only on what somebody gave, see
 * {@code docs/decisions/0005-assumptions-never-rule-out.md}.
 */
final class Rulings {

    private static final double FULLEST = 0.9;
    private static final int CAN_KILL = 4;

    private final Situation situation;
    private final BoatMeasurer.Evidence found;
    private final List<Ruling> rulings = new ArrayList<>();

    /** Where rules that are broken are told. */
    interface Broken {
        void add(Rule rule, String reason, String remedy);
    }

    Rulings(Situation situation, BoatMeasurer.Evidence found) {
        this.situation = situation;
        this.found = found;
    }

    List<Ruling> all() {
        findings();
        trust();
        fit();
        new CarryRulings(situation, found, this::add).look();
        new MoneyRulings(situation, found, this::add).look();
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
            if (inTheBoat(each) && !found.condition().stops().contains(each)) {
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

    /** A missing life jacket is bought and a bad trailer left behind before the first launch: neither says anything of it. */
    private static boolean inTheBoat(SeriousFinding each) {
        return each.safety() >= CAN_KILL && each.group().hiddenInBoat();
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
        ListingAssessment firm = found.trust().firm();
        if (firm.verdict() == ListingVerdict.STOP) {
            String remedy = firm.bestProof()
                    .map(proof -> "Ask for this first: "
                            + proof.signal().proof().orElse(proof.signal().phrase()) + ". It would bring the chance to "
                            + situation.display().percent(proof.concernAfter()) + ".")
                    .orElse("Walk away from this one.");
            add(Rule.FRAUD, firm.sentence(), remedy);
        }
    }

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
            case "water-match" -> water();
            case "store-length", "roof-load", "alone-lift", "car-length", "haul" -> {
                // CarryRulings tells these: they do not depend on the person alone
            }
            default ->
                add(
                        Rule.FIT,
                        person + ": " + score.dealBreaker().orElse(""),
                        remedy(score.row().id()));
        }
    }

    private void water() {
        if (situation.trip().mainWater() != null) {
            add(
                    Rule.WATER,
                    "A " + found.boat().kind().label() + " is not made for a "
                            + situation.mainWater().label() + ".",
                    "Choose calmer water as your main water, or another kind of boat.");
        }
    }

    private static String remedy(String row) {
        return switch (row) {
            case "stability" -> "Try it on calm water with somebody standing by; if it is steady enough, say so here.";
            case "draught" -> "Measure how deep the water really is, or go where it is deeper, and say so here.";
            case "reentry" -> "Practise getting back aboard until it works, and say so here.";
            case "seat-width", "leg-room", "cockpit-exit", "foot-height" ->
                "Sit in it and try; if it fits after all, say so here.";
            default -> "If it suits you after all, say so here.";
        };
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
