package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.haul.Ground;
import org.keelweigh.haul.Surface;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/**
 * Lists the choices that nobody made, each with everything it could be: what the form offers, but only the materials that
 * boats of a kind are made of, and pedals only for pedal kayaks, because the kind would be another one otherwise.
 */
final class AssumedChoices {

    private static final List<String> WEED =
            List.of("none", "here and there", "often in the way", "thick: drives clog");

    private final Situation situation;
    private final Catalogues catalogues;
    private final List<AssumedChoice> choices = new ArrayList<>();

    private AssumedChoices(Situation situation, Catalogues catalogues) {
        this.situation = situation;
        this.catalogues = catalogues;
    }

    static List<AssumedChoice> of(Measured measured, Catalogues catalogues) {
        AssumedChoices all = new AssumedChoices(measured.situation(), catalogues);
        measured.boats().forEach(all::boat);
        all.water();
        all.transport();
        all.launches();
        all.people();
        return List.copyOf(all.choices);
    }

    private void boat(BoatReport report) {
        BoatKind kind = report.boat().kind();
        BoatDefaults defaults = catalogues.defaults();
        if (report.boat().materialAssumed()) {
            HullMaterial assumed = report.boat().material();
            ofBoat(report, "boat.material", "material", assumed, defaults.materialsOf(kind), HullMaterial::label);
        }
        if (report.candidate().data().boat().drive() == null) {
            List<DriveKind> drives = Arrays.stream(DriveKind.values())
                    .filter(each -> kind == BoatKind.PEDAL_KAYAK || !each.pedalled())
                    .toList();
            ofBoat(report, "boat.drive", "drive", report.boat().drive(), drives, DriveKind::label);
        }
        if (report.candidate().data().listing().seller() == null) {
            List<SellerKind> sellers = List.of(SellerKind.values());
            ofBoat(report, "listing.seller", "seller", SellerKind.PRIVATE, sellers, SellerKind::label);
        }
    }

    private <E extends Enum<E> & Coded> void ofBoat(
            BoatReport report, String field, String what, E assumed, List<E> values, Function<E, String> label) {
        add(
                field,
                Optional.of(report),
                report.name() + ": " + what,
                label.apply(assumed),
                values.stream()
                        .filter(each -> each != assumed)
                        .map(each -> other(
                                label.apply(each), facts -> Supposition.boat(facts, report.id(), field, each.code()))));
    }

    private void water() {
        Trip trip = situation.trip();
        Waters main = situation.mainWater();
        if (trip.mainWater() == null) {
            ofTrip("mainWater", "main water", main.label(), waters(0, main));
        }
        if (trip.hardestWater() == null) {
            ofTrip("hardestWater", "hardest water", main.label(), waters(main.ordinal() + 1, main));
        }
        if (trip.weedLevel() == null) {
            Stream<AssumedChoice.Other> levels =
                    Stream.of(0, 1, 2, 3).map(each -> trip(WEED.get(each), "weedLevel", each));
            ofTrip("weedLevel", "weed", "not to matter", levels);
        }
    }

    private static Stream<AssumedChoice.Other> waters(int from, Waters but) {
        String field = from == 0 ? "mainWater" : "hardestWater";
        return Arrays.stream(Waters.values())
                .skip(from)
                .filter(each -> each != but)
                .map(each -> trip(each.label(), field, each.code()));
    }

    private void transport() {
        Trip trip = situation.trip();
        if (trip.storage() == null) {
            ofTrip(
                    "storage",
                    "where it lives",
                    "at home, at no cost",
                    Arrays.stream(StoragePlace.values()).map(each -> trip(each.label(), "storage", each.code())));
        }
        if (trip.car().hasBars() == null) {
            ofTrip("car.hasBars", "roof bars", "not there yet", Stream.of(trip("there already", "car.hasBars", true)));
        }
        if (trip.car().canTow() == null) {
            ofTrip("car.canTow", "the car's hitch", "not there", Stream.of(trip("there", "car.canTow", true)));
        }
    }

    private void launches() {
        List<LaunchSite> launches = situation.trip().launches();
        if (launches.isEmpty()) {
            surface(
                    "trip.launches",
                    "surface from car to water",
                    each -> facts -> Supposition.shortlist(
                            facts,
                            "trip.launches",
                            List.of(new LaunchSite("Launch", null, each.code(), null, null, null))));
        }
        for (int place = 0; place < launches.size(); place++) {
            if (launches.get(place).surface() == null) {
                String field = "trip.launches[" + place + "].surface";
                surface(
                        field,
                        launches.get(place).name() + ": surface",
                        each -> facts -> Supposition.shortlist(facts, field, each.code()));
            }
        }
    }

    private void surface(String field, String name, Function<Surface, UnaryOperator<Facts>> set) {
        Surface usual = catalogues.haul().surface(Ground.USUAL_SURFACE);
        add(
                field,
                Optional.empty(),
                name,
                usual.label(),
                catalogues.haul().surfaces().stream()
                        .filter(each -> !each.equals(usual))
                        .map(each -> other(each.label(), set.apply(each))));
    }

    private void people() {
        for (Participant each : situation.people()) {
            if (each.data().use() == null) {
                String owner = "people." + each.id().map(PersonId::toString).orElse("somebody");
                add(
                        owner + ".use",
                        Optional.empty(),
                        each.name() + ": kind of use",
                        each.use().label(),
                        Arrays.stream(PaddlingUse.values())
                                .filter(use -> use != each.use())
                                .map(use -> other(
                                        use.label(), facts -> Supposition.person(facts, each, "use", use.code()))));
            }
        }
    }

    private void ofTrip(String field, String name, String assumed, Stream<AssumedChoice.Other> others) {
        add("trip." + field, Optional.empty(), name, assumed, others);
    }

    private static AssumedChoice.Other trip(String label, String field, Object value) {
        return other(label, facts -> Supposition.shortlist(facts, "trip." + field, value));
    }

    private static AssumedChoice.Other other(String label, UnaryOperator<Facts> set) {
        return new AssumedChoice.Other(label, set);
    }

    private void add(
            String field, Optional<BoatReport> boat, String name, String assumed, Stream<AssumedChoice.Other> others) {
        List<AssumedChoice.Other> list = others.toList();
        if (!list.isEmpty()) {
            choices.add(new AssumedChoice(field, boat.map(BoatReport::id), name, assumed, list));
        }
    }
}
