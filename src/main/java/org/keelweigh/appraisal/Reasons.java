package org.keelweigh.appraisal;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.keelweigh.decision.Difference;
import org.keelweigh.shortlist.Display;

/** Says in what one boat is ahead of another, and whether anything but chance lies between them. */
public final class Reasons {

    private static final double LEVEL = 1e-9;
    private static final int MOST_NAMED = 2;

    private final Measured measured;
    private final Perspective perspective;

    /** Looks at measured boats from a perspective. */
    public Reasons(Measured measured, Perspective perspective) {
        this.measured = measured;
        this.perspective = perspective;
    }

    /** Names in what each of two boats is ahead of the other, strongest first, with the measures. */
    public String of(int boat, int other) {
        Difference difference = perspective.difference(boat, other);
        String pros = named(difference.pros(), boat, other);
        String cons = named(difference.cons(), other, boat);
        if (pros.isEmpty() && cons.isEmpty()) {
            return "Nothing that you weigh tells them apart.";
        }
        if (pros.isEmpty()) {
            return name(boat) + " is ahead of " + name(other) + " in nothing that you weigh.";
        }
        return "It is ahead in " + pros + "; " + name(other) + " is ahead in "
                + (cons.isEmpty() ? "nothing that you weigh" : cons) + ".";
    }

    private String named(List<Difference.Part> parts, int boat, int other) {
        return parts.stream()
                .map(part -> measured.yardsticks().all().get(part.criterion()))
                .filter(each -> !write(each, boat).equals(write(each, other)))
                .filter(each -> Math.abs(measure(boat, each) - measure(other, each)) >= noise(each, boat, other))
                .limit(MOST_NAMED)
                .map(each -> lower(each.name()) + " (" + write(each, boat) + " against " + write(each, other) + ")")
                .collect(Collectors.joining(" and "));
    }

    /** What differs from person to person has no measure of all together; its value stands in. */
    private String write(Yardstick yardstick, int boat) {
        boolean together =
                perspective.person().isEmpty() && measured.situation().people().size() > 1;
        if (yardstick.personal() && together) {
            int column = measured.yardsticks().column(yardstick.measure());
            return Display.number(perspective.value(boat, column), 0) + " of 100";
        }
        return yardstick
                .unit()
                .write(measure(boat, yardstick), measured.situation().display());
    }

    private double measure(int boat, Yardstick yardstick) {
        int column = measured.yardsticks().column(yardstick.measure());
        return measured.boats().get(boat).measures().get(person()).get(column);
    }

    private int person() {
        for (int p = 0; p < measured.situation().people().size(); p++) {
            if (measured.situation().people().get(p).id().equals(perspective.person())) {
                return p;
            }
        }
        return 0;
    }

    /** Whether no more lies between two boats than the sampling of what may come could make. */
    boolean level(int boat, int other, double margin) {
        int column = measured.yardsticks().column(Measure.REPAIR_RISK);
        double noise = column < 0 ? 0 : perspective.share(column) * noisePoints(column, boat, other);
        return margin <= noise + LEVEL;
    }

    private double noisePoints(int column, int boat, int other) {
        Yardstick yardstick = measured.yardsticks().all().get(column);
        double low = Math.min(measure(boat, yardstick), measure(other, yardstick));
        return Math.abs(yardstick.criterion().valueFunction().value(low)
                - yardstick.criterion().valueFunction().value(low + noise(yardstick, boat, other)));
    }

    /** Twice the standard error of the difference of a measure that is sampled; nothing for those that are not. */
    private double noise(Yardstick yardstick, int boat, int other) {
        return yardstick.measure() != Measure.REPAIR_RISK
                ? 0
                : 2
                        * Math.hypot(
                                measured.boats().get(boat).futures().repairSurpriseError(),
                                measured.boats().get(other).futures().repairSurpriseError());
    }

    private String name(int boat) {
        return measured.boats().get(boat).name();
    }

    static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
