package org.keelweigh.boat.identity;

/** What the hull number means for the purchase. */
public enum IdentityVerdict {
    /** The format fits and agrees with the listing; that does not prove it genuine. */
    IN_ORDER,
    /** Something does not agree; papers have to explain it before money changes hands. */
    ASK_FOR_PAPERS,
    /** A boat that has to carry a number has none, or the number was tampered with. */
    RULED_OUT,
    /** This kind of boat may be without a number. */
    NOTHING_TO_CHECK,
    /** Nobody has looked yet. */
    NOT_LOOKED
}
