package org.keelweigh.fit;

import java.util.List;
import java.util.stream.Collectors;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;

/**
 * The rows of fit, how boats suit waters, and the beam that uses ask for.
 *
 * @param rows the measures of fit
 * @param waters lines of the table of waters, in order
 * @param beams lines of the table of beams, in order
 */
public record FitCatalogue(List<FitRow> rows, List<WaterMatch> waters, List<NeededBeam> beams) {

    /** The rows that {@link FitAssessment} fills. */
    private static final List<String> NEEDED_ROWS = List.of(
            "capacity-used",
            "seat-width",
            "leg-room",
            "cockpit-exit",
            "foot-height",
            "stability",
            "alone-lift",
            "haul",
            "store-length",
            "bag-mass",
            "car-length",
            "roof-load",
            "bar-spread",
            "draught",
            "weed-none",
            "weed-fins",
            "weed-prop",
            "weed-emotor",
            "cruise",
            "turning",
            "reentry",
            "setup",
            "water-match");

    public FitCatalogue {
        rows = List.copyOf(rows);
        waters = List.copyOf(waters);
        beams = List.copyOf(beams);
    }

    /**
     * Reads {@code fit-rows.csv}, {@code water-match.csv} and {@code needed-beam.csv}.
     *
     * @throws org.keelweigh.catalogue.CatalogueException if a line is unusable
     * @throws IllegalArgumentException if a row, kind or use is missing
     */
    public static FitCatalogue read(Catalogue catalogue) {
        FitCatalogue read = new FitCatalogue(
                catalogue.table("fit-rows.csv").unique("row").map(FitRow::of),
                catalogue.table("water-match.csv").unique("row").map(WaterMatch::of),
                catalogue.table("needed-beam.csv").unique("row").map(NeededBeam::of));
        NEEDED_ROWS.forEach(read::row);
        for (BoatKind kind : BoatKind.values()) {
            if (read.waters.stream().noneMatch(each -> each.kind() == kind)) {
                throw new IllegalArgumentException("water-match.csv has no line for the kind " + kind.code());
            }
            for (PaddlingUse use : PaddlingUse.values()) {
                read.beam(kind, use, NeededBeam.REFERENCE_KG);
            }
        }
        return read;
    }

    /**
     * Finds a row.
     *
     * @throws IllegalArgumentException naming the row and those that exist
     */
    public FitRow row(String id) {
        return rows.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow(() -> {
            String known = rows.stream().map(FitRow::id).collect(Collectors.joining(", "));
            return new IllegalArgumentException("fit-rows.csv has no row \"" + id + "\", only " + known);
        });
    }

    /**
     * Finds how a boat suits the waters.
     *
     * @throws IllegalArgumentException if no line covers its kind, material and length
     */
    public WaterMatch waterMatch(Boat boat) {
        return waters.stream()
                .filter(each -> each.fits(boat))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("water-match.csv has no line for a "
                        + boat.kind().label() + " of " + boat.lengthM().value() + " m"));
    }

    /**
     * Finds the beam that a use asks for.
     *
     * @throws IllegalArgumentException if no line covers it
     */
    public NeededBeam beam(BoatKind kind, PaddlingUse use, double massKg) {
        return beams.stream()
                .filter(each -> each.fits(kind, use, massKg))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "needed-beam.csv has no line for a " + kind.label() + " and the use \"" + use.code() + "\""));
    }
}
