package org.keelweigh.haul;

import org.keelweigh.quantity.FigureWriter;
import org.keelweigh.quantity.Length;

/**
 * From which overhang on a load has to be marked. Local law decides; these are what is commonly asked.
 *
 * @param label where it is common, in plain words
 * @param rearM behind the car, metres
 * @param frontM ahead of the car, metres
 * @param sideM beyond either side, metres
 * @param strict whether only more than that has to be marked; otherwise exactly that too
 * @param marking how it is marked, as a sentence with {@code %s} where it names a length
 * @param markingM the length that it names, metres; 0 where it names none
 */
public record OverhangRule(
        String label, double rearM, double frontM, double sideM, boolean strict, String marking, double markingM) {

    /** Commercial vehicles in the USA, 49 CFR 393.87; the states' rules for private cars differ. */
    public static final OverhangRule USA = new OverhangRule(
            "USA",
            4 * Length.M_PER_FOOT,
            3 * Length.M_PER_FOOT,
            4 * Length.M_PER_INCH,
            true,
            "Check your state: a red or orange flag of %s square by day and a light at night are common.",
            18 * Length.M_PER_INCH);

    /** Great Britain: estimate, check the current code. */
    public static final OverhangRule GREAT_BRITAIN = new OverhangRule(
            "Great Britain",
            1,
            1,
            0.305,
            true,
            "Check the current code: the end must be made clearly visible, and over %s needs more.",
            2);

    /** Much of the European Union: estimate, countries differ. */
    public static final OverhangRule EUROPE = new OverhangRule(
            "much of Europe",
            1,
            0,
            0.2,
            true,
            "Check the country: a warning board behind is common, and little or nothing ahead.",
            0);

    public OverhangRule {
        if (!(rearM >= 0) || !(frontM >= 0) || !(sideM >= 0)) {
            throw new IllegalArgumentException(
                    "Overhangs must be 0 m or more, not " + rearM + ", " + frontM + ", " + sideM);
        }
    }

    /** Tells how an overhang is marked, as a sentence. */
    public String marking(FigureWriter in) {
        return marking.formatted(markingM < 1 ? in.small(markingM) : in.length(markingM));
    }

    /** Tells whether an overhang behind has to be marked. */
    public boolean marksRear(double overhangM) {
        return beyond(overhangM, rearM);
    }

    /** Tells whether an overhang ahead has to be marked or avoided. */
    public boolean marksFront(double overhangM) {
        return beyond(overhangM, frontM);
    }

    /** Tells whether an overhang beyond a side has to be marked. */
    public boolean marksSide(double overhangM) {
        return beyond(overhangM, sideM);
    }

    /** Makes the same rule with the other comparison: many state laws say "4 feet or more". */
    public OverhangRule withStrict(boolean onlyMore) {
        return new OverhangRule(label, rearM, frontM, sideM, onlyMore, marking, markingM);
    }

    private boolean beyond(double overhangM, double boundM) {
        return overhangM > 0 && (strict ? overhangM > boundM : overhangM >= boundM);
    }
}
