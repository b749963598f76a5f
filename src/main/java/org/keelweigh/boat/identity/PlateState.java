package org.keelweigh.boat.identity;

/** What was found where the hull number should be. */
public enum PlateState {
    /** The characters were read. */
    READ,
    /** Nobody has looked yet. */
    NOT_LOOKED,
    /** There is no number and no place where one was. */
    MISSING,
    /** There is a number, but wear, paint or dirt hides characters. */
    UNREADABLE,
    /** The number was ground off, cut, filled or stamped over. */
    TAMPERED,
    /** There is none, and this kind of boat may be without. */
    NOT_REQUIRED
}
