package org.keelweigh.report;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatDefaults;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistId;

/** One pedal kayak on a shortlist of its own. */
public final class FieldCases {

    public static final InspectionCatalogue INSPECTION = InspectionCatalogue.read(Catalogue.shipped());
    public static final CandidateId BOAT = new CandidateId(UUID.fromString("6f2c1f0e-0000-4000-8000-000000000001"));

    private static final ShortlistId LIST = new ShortlistId(UUID.fromString("6f2c1f0e-0000-4000-8000-000000000002"));
    private static final BoatDefaults DEFAULTS = BoatDefaults.read(Catalogue.shipped());

    private FieldCases() {}

    public static Candidate boat(long version, Finding... findings) {
        CandidateData data = CandidateData.of("Green pedal boat", BoatKind.PEDAL_KAYAK);
        return new Candidate(BOAT, LIST, version, data.withFindings(List.of(findings)));
    }

    public static Facts facts(Candidate boat) {
        return new Facts(new Shortlist(LIST, 0, ShortlistData.named("Spring")), List.of(), List.of(boat));
    }

    public static List<Check> checks(Candidate candidate) {
        return INSPECTION.applicable(DEFAULTS.resolve(candidate.data().boat(), 2026));
    }

    public static String sheet(Candidate candidate, String title) {
        Boat boat = DEFAULTS.resolve(candidate.data().boat(), 2026);
        FieldSheet.Stop stop = new FieldSheet.Stop(candidate, boat, INSPECTION.applicable(boat));
        return FieldSheet.of(title, List.of(stop), INSPECTION, Instant.parse("2026-04-01T10:00:00Z"));
    }
}
