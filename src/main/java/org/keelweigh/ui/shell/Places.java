package org.keelweigh.ui.shell;

import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ShortlistId;

/** The addresses of the pages, in one place. */
public final class Places {

    /** The route parameter that names the shortlist. */
    public static final String SHORTLIST = "shortlist";

    /** The route parameter that names the boat. */
    public static final String BOAT = "boat";

    /** The route of the compare page. */
    public static final String COMPARE = "list/:" + SHORTLIST;

    /** The route of the page about trip and people. */
    public static final String TRIP = COMPARE + "/trip";

    /** The route of the weighing page. */
    public static final String WEIGH = COMPARE + "/weigh";

    /** The route of the page about offers. */
    public static final String OFFER = COMPARE + "/offer";

    /** The route of a boat's page; the last part names the section shown. */
    public static final String BOAT_PAGE = COMPARE + "/boat/:" + BOAT + "/:section?";

    /** The route of the visit to a boat. */
    public static final String VISIT = COMPARE + "/visit/:" + BOAT;

    private Places() {}

    /** Tells the address of the compare page. */
    public static String compare(ShortlistId shortlist) {
        return "list/" + shortlist;
    }

    /** Tells the address of the page about trip and people. */
    public static String trip(ShortlistId shortlist) {
        return compare(shortlist) + "/trip";
    }

    /** Tells the address of the weighing page. */
    public static String weigh(ShortlistId shortlist) {
        return compare(shortlist) + "/weigh";
    }

    /** Tells the address of the page about offers. */
    public static String offer(ShortlistId shortlist) {
        return compare(shortlist) + "/offer";
    }

    /** Tells the address of a section of a boat's page. */
    public static String boat(ShortlistId shortlist, CandidateId boat, String section) {
        return compare(shortlist) + "/boat/" + boat + "/" + section;
    }

    /** Tells the address of the visit to a boat. */
    public static String visit(ShortlistId shortlist, CandidateId boat) {
        return compare(shortlist) + "/visit/" + boat;
    }
}
