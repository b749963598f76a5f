package org.keelweigh.shortlist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.BoatFacts;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.ListingFacts;

/**
 * What people typed or imported about one candidate.
 *
 * @param name what people call the boat
 * @param boat the boat
 * @param listing the listing and its seller
 * @param plate the hull identification number
 * @param findings what came out of the checks made, at most one for each check
 * @param liftedRulings deal-breakers that a person has lifted: rule id to the written reason
 * @param liking how much each person likes it, 0 to 10: person id to liking
 * @param daysToLaunch days from the deal to the first launch; {@code null} means nobody said
 * @param notes a person's own words
 */
public record CandidateData(
        String name,
        BoatFacts boat,
        ListingFacts listing,
        PlateFacts plate,
        List<Finding> findings,
        SortedMap<String, String> liftedRulings,
        SortedMap<String, Integer> liking,
        @Nullable Integer daysToLaunch,
        @Nullable String notes) {

    public CandidateData {
        findings = List.copyOf(findings);
        liftedRulings = Collections.unmodifiableSortedMap(new TreeMap<>(liftedRulings));
        liking = Collections.unmodifiableSortedMap(new TreeMap<>(liking));
    }

    /** Makes a candidate of which only name and kind are known. */
    public static CandidateData of(String name, BoatKind kind) {
        return new CandidateData(
                name,
                BoatFacts.of(kind),
                ListingFacts.unknown(),
                PlateFacts.unknown(),
                List.of(),
                new TreeMap<>(),
                new TreeMap<>(),
                null,
                null);
    }

    /** Tells the same under another name. */
    public CandidateData named(String other) {
        return new CandidateData(other, boat, listing, plate, findings, liftedRulings, liking, daysToLaunch, notes);
    }

    /** Tells the same with other boat facts. */
    public CandidateData withBoat(BoatFacts other) {
        return new CandidateData(name, other, listing, plate, findings, liftedRulings, liking, daysToLaunch, notes);
    }

    /** Tells the same with other listing facts. */
    public CandidateData withListing(ListingFacts other) {
        return new CandidateData(name, boat, other, plate, findings, liftedRulings, liking, daysToLaunch, notes);
    }

    /** Tells the same with another plate. */
    public CandidateData withPlate(PlateFacts other) {
        return new CandidateData(name, boat, listing, other, findings, liftedRulings, liking, daysToLaunch, notes);
    }

    /** Tells the same with other findings. */
    public CandidateData withFindings(List<Finding> others) {
        return new CandidateData(name, boat, listing, plate, others, liftedRulings, liking, daysToLaunch, notes);
    }

    /** Tells the same with {@code finding} in place of what was found before on that check. */
    public CandidateData withFinding(Finding finding) {
        List<Finding> others = new ArrayList<>(withoutFinding(finding.check()).findings);
        others.add(finding);
        return withFindings(others);
    }

    /** Tells the same with the check not made. */
    public CandidateData withoutFinding(String check) {
        return withFindings(
                findings.stream().filter(each -> !each.check().equals(check)).toList());
    }

    /** Tells the same with a deal-breaker lifted for a written reason, or standing again when the reason is blank. */
    public CandidateData withLifted(String rule, String reason) {
        SortedMap<String, String> lifted = new TreeMap<>(liftedRulings);
        if (reason.isBlank()) {
            lifted.remove(rule);
        } else {
            lifted.put(rule, reason.strip());
        }
        return new CandidateData(name, boat, listing, plate, findings, lifted, liking, daysToLaunch, notes);
    }
}
