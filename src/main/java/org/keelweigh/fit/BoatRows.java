package org.keelweigh.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.keelweigh.boat.Boat;
import org.keelweigh.quantity.FigureWriter;

/** Fills the rows that depend on boat, water, home and car alone. */
record BoatRows(FitCatalogue catalogue, Boat boat, Setting setting, EasySpeed speed, FigureWriter in) {

    private static final double MAIN_SHARE = 0.7;

    List<FitScore> all() {
        List<FitScore> scores = new ArrayList<>();
        if (boat.kind().rigid()) {
            scores.add(store());
            scores.add(carLength());
            scores.add(roofLoad());
            scores.add(barSpread());
        } else {
            scores.add(scored("bag-mass", boat.riggedMassKg(), boat.bareMassKg().isAssumed(), ""));
        }
        scores.add(draught());
        scores.add(weed());
        scores.add(cruise());
        if (setting.mainWater() == Waters.SLOW_RIVER || setting.mainWater() == Waters.WHITEWATER) {
            scores.add(scored("turning", boat.lengthM().value(), boat.lengthM().isAssumed(), ""));
        }
        scores.add(setup());
        scores.add(waterMatch());
        return scores;
    }

    OptionalDouble waterPoints() {
        if (setting.mainWater() == null) {
            return OptionalDouble.empty();
        }
        double main = pointsOn(setting.mainWater());
        double hardest = setting.hardestWater() == null ? main : pointsOn(setting.hardestWater());
        return OptionalDouble.of(MAIN_SHARE * main + (1 - MAIN_SHARE) * hardest);
    }

    private double pointsOn(Waters water) {
        return catalogue.waterMatch(boat).points().get(water);
    }

    private FitScore waterMatch() {
        if (setting.mainWater() == null) {
            return unknown("water-match");
        }
        return scored(
                "water-match",
                pointsOn(setting.mainWater()),
                boat.lengthM().isAssumed(),
                "Taken for a " + catalogue.waterMatch(boat).label() + " on: "
                        + setting.mainWater().label() + ".");
    }

    private FitScore store() {
        if (setting.storeLengthM() == null) {
            return unknown("store-length");
        }
        double spareMm = 1000 * (setting.storeLengthM() - boat.lengthM().value());
        boolean breaks =
                !Boolean.TRUE.equals(setting.elsewhere()) && !boat.lengthM().isAssumed();
        return FitScore.scored(
                catalogue.row("store-length"),
                spareMm,
                boat.lengthM().isAssumed(),
                breaks,
                "Room " + in.length(setting.storeLengthM()) + ", boat "
                        + in.length(boat.lengthM().value()) + ".",
                in);
    }

    private FitScore carLength() {
        return setting.carLengthM() == null
                ? unknown("car-length")
                : onRoof(
                        "car-length",
                        boat.lengthM().value() / setting.carLengthM(),
                        boat.lengthM().isAssumed());
    }

    private FitScore roofLoad() {
        return setting.roofLoadRatio() == null
                ? unknown("roof-load")
                : onRoof("roof-load", setting.roofLoadRatio(), boat.bareMassKg().isAssumed());
    }

    private FitScore barSpread() {
        return setting.barSpreadM() == null
                ? unknown("bar-spread")
                : onRoof(
                        "bar-spread",
                        setting.barSpreadM() / boat.lengthM().value(),
                        boat.lengthM().isAssumed());
    }

    /**
     * Scores a row about the roof, which breaks no deal where a trailer can be used or the boat's figure is assumed.
     */
    private FitScore onRoof(String rowId, double measure, boolean assumed) {
        return FitScore.scored(
                catalogue.row(rowId), measure, assumed, !assumed && !Boolean.TRUE.equals(setting.canTow()), "", in);
    }

    private FitScore draught() {
        if (setting.leastDepthM() == null) {
            return unknown("draught");
        }
        return FitScore.scored(
                catalogue.row("draught"),
                1000 * (setting.leastDepthM() - boat.draughtM().value()),
                boat.draughtM().isAssumed(),
                !boat.draughtM().isAssumed(),
                "Needs " + in.length(boat.draughtM().value()) + ".",
                in);
    }

    private FitScore weed() {
        String rowId = "weed-" + boat.drive().code();
        return setting.weedLevel() == null ? unknown(rowId) : scored(rowId, setting.weedLevel(), false, "");
    }

    private FitScore cruise() {
        return setting.wantedKmPerH() == null
                ? unknown("cruise")
                : scored("cruise", speed.kmPerH() / setting.wantedKmPerH(), true, "An estimate.");
    }

    private FitScore setup() {
        if (setting.setupMinutes() != null) {
            return scored("setup", setting.setupMinutes(), false, "As timed.");
        }
        double pathM = setting.pathM() == null ? 0 : setting.pathM();
        String note = setting.pathM() == null ? "An estimate without the way to the water." : "An estimate.";
        return scored("setup", SetupTime.minutes(boat, pathM), true, note);
    }

    private FitScore scored(String rowId, double measure, boolean assumed, String note) {
        return FitScore.scored(catalogue.row(rowId), measure, assumed, !assumed, note, in);
    }

    private FitScore unknown(String rowId) {
        FitRow row = catalogue.row(rowId);
        return new FitScore.Unknown(row, row.needed());
    }
}
