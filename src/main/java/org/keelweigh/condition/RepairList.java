package org.keelweigh.condition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Turns found faults into repair lines without paying for one repair twice. */
final class RepairList {

    private static final Set<String> BOUGHT_ANEW = Set.of("pfd", "paddle", "cart-check");

    private static final Comparator<FoundFault> DEAREST = Comparator.comparingDouble(FoundFault::expectedSpend)
            .thenComparing(fault -> fault.check().id());

    private RepairList() {}

    static List<RepairLine> of(List<FoundFault> faults) {
        Map<RepairGroup, FoundFault> dearest = new EnumMap<>(RepairGroup.class);
        faults.stream()
                .sorted(DEAREST)
                .forEach(fault -> dearest.put(fault.check().group(), fault));
        List<RepairLine> lines = new ArrayList<>();
        for (FoundFault fault : faults) {
            RepairGroup group = fault.check().group();
            if (group.repairable()) {
                FoundFault leading = dearest.get(group);
                boolean counts = group.addsUp() || leading == fault;
                lines.add(boughtAnew(fault) ? anew(fault) : counts ? counted(fault) : curedWith(fault, leading));
            }
        }
        return List.copyOf(lines);
    }

    /** Gear that is absent or unserviceable is no repair of the boat: it is bought like all gear that does not come along. */
    private static boolean boughtAnew(FoundFault fault) {
        return BOUGHT_ANEW.contains(fault.check().id())
                && fault.grade().outcome() == Outcome.MAJOR
                && fault.finding().quote() == null;
    }

    private static RepairLine anew(FoundFault fault) {
        return line(fault, 0, fault.words() + ". What is needed in its place is counted with what has to be bought.");
    }

    private static RepairLine counted(FoundFault fault) {
        return line(fault, fault.spendShare(), fault.words() + ". " + reason(fault));
    }

    private static String reason(FoundFault fault) {
        if (fault.finding().quote() != null) {
            return "Priced by the written quote.";
        }
        Grade grade = fault.pricingGrade();
        String share = String.format(Locale.ROOT, "%.0f %%", 100 * grade.spendShare());
        return switch (grade.outcome()) {
            case MINOR -> share + " of the usual cost counts, because most minor faults are left alone.";
            case MAJOR -> share + " of the usual cost counts, because some buyers live with it.";
            case STOP, FINE, NOT_FITTED -> "The whole usual cost counts for whoever buys it all the same.";
        };
    }

    private static RepairLine curedWith(FoundFault fault, FoundFault leading) {
        return line(
                fault,
                0,
                fault.words() + ". Put right together with \"" + leading.check().title()
                        + "\", whose cost is the larger one.");
    }

    private static RepairLine line(FoundFault fault, double share, String reason) {
        return new RepairLine(
                fault.check().id(), fault.check().group(), fault.grade().outcome(), fault.cost(), share, reason);
    }
}
