package org.keelweigh.condition;

import org.keelweigh.boat.Coded;

/** What to do about a listing, by how likely it is that something is wrong with the sale itself. */
public enum ListingVerdict implements Coded {
    GO_ON("go-on", "go on"),
    ASK_FOR_PROOF("ask", "ask for the missing proof before you travel"),
    PAPERS_FIRST("papers-first", "view it only once the papers are shown, and pay nothing before"),
    STOP("stop", "stop here");

    private static final double ASK_FROM = 0.03;
    private static final double PAPERS_FROM = 0.10;
    private static final double STOP_ABOVE = 0.30;

    private final String code;
    private final String label;

    ListingVerdict(String code, String label) {
        this.code = code;
        this.label = label;
    }

    /** Tells the verdict for the chance of fraud and the chance of a stolen boat taken together, in [0, 1]. */
    static ListingVerdict of(double concern) {
        if (concern < ASK_FROM) {
            return GO_ON;
        }
        if (concern < PAPERS_FROM) {
            return ASK_FOR_PROOF;
        }
        return concern <= STOP_ABOVE ? PAPERS_FIRST : STOP;
    }

    /**
     * Tells the verdict where no sign speaks against the sale: however often things go wrong where the boat is offered,
     * that alone stops nobody.
     */
    static ListingVerdict withoutSigns(double concern) {
        return of(Math.min(concern, STOP_ABOVE));
    }

    @Override
    public String code() {
        return code;
    }

    /** Tells what to do in plain words, as the end of a sentence. */
    public String label() {
        return label;
    }
}
