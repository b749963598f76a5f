package org.keelweigh.boat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;

/**
 * The usual dimensions, masses and prices by kind, material and drive, with which gaps in the facts are filled.
 *
 * <p>Read from the tables {@code boat-defaults.csv} (one line for each kind and material; the first line of a kind is its
 * usual material) and {@code drive-defaults.csv}.
 */
public final class BoatDefaults {

    private static final int USUAL_AGE_YEARS = 5;
    private static final double GREATEST_PRICE = 50_000;

    private final List<Usual> usual;
    private final Map<DriveKind, UsualDrive> drives;
    private final double currencyFactor;

    private BoatDefaults(List<Usual> usual, Map<DriveKind, UsualDrive> drives, double currencyFactor) {
        this.usual = usual;
        this.drives = drives;
        this.currencyFactor = currencyFactor;
    }

    /**
     * Reads the defaults.
     *
     * @throws org.keelweigh.catalogue.CatalogueException if a line is unusable or a kind or drive is missing
     */
    public static BoatDefaults read(Catalogue catalogue) {
        Table boats = catalogue.table("boat-defaults.csv");
        List<Usual> usual = boats.map(Usual::of);
        for (BoatKind kind : BoatKind.values()) {
            if (usual.stream().noneMatch(each -> each.kind == kind)) {
                throw new IllegalArgumentException("boat-defaults.csv has no line for the kind " + kind.code());
            }
        }
        Map<DriveKind, UsualDrive> drives = new EnumMap<>(DriveKind.class);
        catalogue.table("drive-defaults.csv").map(UsualDrive::of).forEach(each -> drives.put(each.drive, each));
        for (DriveKind drive : DriveKind.values()) {
            if (!drives.containsKey(drive)) {
                throw new IllegalArgumentException("drive-defaults.csv has no line for the drive " + drive.code());
            }
        }
        return new BoatDefaults(usual, drives, 1);
    }

    /**
     * Makes the same defaults with prices in another currency.
     *
     * @param factor units of that currency for one USD of 2025; above 0
     */
    public BoatDefaults inCurrency(double factor) {
        if (!(factor > 0 && factor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The currency factor must be above 0, not " + factor);
        }
        return new BoatDefaults(usual, drives, factor);
    }

    /** Tells the materials this kind is made of, the usual one first. */
    public List<HullMaterial> materialsOf(BoatKind kind) {
        return usual.stream()
                .filter(each -> each.kind == kind)
                .map(Usual::material)
                .toList();
    }

    /** Tells the drive this kind usually has. */
    public DriveKind usualDrive(BoatKind kind) {
        return kind == BoatKind.PEDAL_KAYAK ? DriveKind.PROPELLER : DriveKind.NONE;
    }

    /**
     * Fills the gaps in {@code facts}. Every figure filled in says so and why.
     *
     * @param thisYear the calendar year in which the question is asked, for the assumed model year
     */
    public Boat resolve(BoatFacts facts, int thisYear) {
        Usual like = like(facts);
        DriveKind drive = facts.drive() == null ? usualDrive(facts.kind()) : facts.drive();
        UsualDrive usualDrive = drives.get(drive);
        String why = "usual for a " + like.kind.label() + " of " + like.material.label();
        Figure length = figure(facts.lengthM(), like.lengthM, why);
        double scale = length.value() / like.lengthM;
        String scaledWhy = scale == 1 ? why : why + ", in proportion to its length";
        Figure beam = figure(facts.beamM(), like.beamM, why);
        String driveWhy = "usual for " + drive.label();
        double priceNew = currencyFactor * (like.priceNew + usualDrive.priceAdded(facts.kind()));
        return new Boat(
                facts.kind(),
                like.material,
                facts.material() == null,
                drive,
                figure(
                        facts.modelYear() == null ? null : facts.modelYear().doubleValue(),
                        thisYear - USUAL_AGE_YEARS,
                        "assumed " + USUAL_AGE_YEARS + " years old"),
                figure(facts.priceNew(), priceNew, why),
                length,
                beam,
                Figure.assumed(like.depthM, why),
                figure(facts.bareMassKg(), like.bareMassKg * scale * (beam.value() / like.beamM), scaledWhy),
                figure(facts.seatMassKg(), like.seatMassKg, why),
                figure(facts.driveMassKg(), usualDrive.massKg, driveWhy),
                figure(facts.batteryMassKg(), usualDrive.batteryMassKg, driveWhy),
                figure(facts.fittingsMassKg(), 0, "nothing else said to be fitted"),
                figure(facts.ratedLoadKg(), like.ratedLoadKg * scale, scaledWhy),
                figure(facts.draughtM(), Math.max(like.draughtM, usualDrive.draughtM), driveWhy),
                seats(facts, like, length.value(), why),
                Figure.assumed(length.value() * usualDrive.stationShare, driveWhy));
    }

    private Usual like(BoatFacts facts) {
        List<Usual> ofKind =
                usual.stream().filter(each -> each.kind == facts.kind()).toList();
        return ofKind.stream()
                .filter(each -> each.material == facts.material())
                .findFirst()
                .orElseGet(() -> facts.material() == null
                        ? ofKind.getFirst()
                        : ofKind.getFirst().madeOf(facts.material()));
    }

    private static List<Boat.Seat> seats(BoatFacts facts, Usual like, double lengthM, String why) {
        int count = facts.seats().isEmpty() ? like.seats : facts.seats().size();
        List<Boat.Seat> seats = new ArrayList<>();
        IntStream.range(0, count).forEach(i -> {
            SeatFacts given = facts.seats().isEmpty()
                    ? new SeatFacts(null, null)
                    : facts.seats().get(i);
            double share = like.seatStationShare + (i - (count - 1) / 2.0) * 0.25;
            seats.add(new Boat.Seat(
                    figure(given.stationM(), lengthM * share, why), figure(given.widthM(), like.seatWidthM, why)));
        });
        return seats;
    }

    private static Figure figure(@Nullable Double typed, double usual, String why) {
        return typed == null ? Figure.assumed(usual, why) : Figure.typed(typed);
    }

    private record Usual(
            BoatKind kind,
            HullMaterial material,
            double lengthM,
            double beamM,
            double depthM,
            double bareMassKg,
            double seatMassKg,
            double ratedLoadKg,
            double draughtM,
            int seats,
            double seatStationShare,
            double seatWidthM,
            double priceNew) {

        static Usual of(Row row) {
            return new Usual(
                    Coded.parse(BoatKind.class, row.text("kind")),
                    Coded.parse(HullMaterial.class, row.text("material")),
                    row.number("length_m", 1.5, 8),
                    row.number("beam_m", 0.4, 2),
                    row.number("depth_m", 0.08, 0.8),
                    row.number("bare_mass_kg", 5, 200),
                    row.number("seat_mass_kg", 0, 20),
                    row.number("rated_load_kg", 40, 800),
                    row.number("draught_m", 0.02, 1),
                    (int) row.number("seats", 1, 4),
                    row.number("seat_station_share", 0.2, 0.8),
                    row.number("seat_width_m", 0.25, 1.2),
                    row.number("price_new", 50, GREATEST_PRICE));
        }

        Usual madeOf(HullMaterial other) {
            return new Usual(
                    kind,
                    other,
                    lengthM,
                    beamM,
                    depthM,
                    bareMassKg,
                    seatMassKg,
                    ratedLoadKg,
                    draughtM,
                    seats,
                    seatStationShare,
                    seatWidthM,
                    priceNew);
        }
    }

    private record UsualDrive(
            DriveKind drive,
            double massKg,
            double batteryMassKg,
            double stationShare,
            double draughtM,
            double priceAdded) {

        static UsualDrive of(Row row) {
            return new UsualDrive(
                    Coded.parse(DriveKind.class, row.text("drive")),
                    row.number("mass_kg", 0, 60),
                    row.number("battery_mass_kg", 0, 60),
                    row.number("station_share", 0, 1),
                    row.number("draught_m", 0, 1),
                    row.number("price_added", 0, GREATEST_PRICE));
        }

        /** A pedal kayak's usual price already holds its drive. */
        double priceAdded(BoatKind kind) {
            return kind == BoatKind.PEDAL_KAYAK && drive != DriveKind.MOTOR ? 0 : priceAdded;
        }
    }
}
