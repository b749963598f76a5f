package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.Need;
import org.keelweigh.cost.PriceBook;
import org.keelweigh.cost.PriceItem;
import org.keelweigh.cost.PricedBoat;
import org.keelweigh.shortlist.CandidateData;

/**
 * The gear that comes with a boat and is fit for use: what a check found absent or unserviceable does not count, whatever
 * the listing says, and is bought anew like anything else that is missing.
 *
 * @param counts price-book id to how many
 */
record ComingGear(Map<String, Integer> counts) {

    /** The gear that a check speaks of. Its major finding reads "absent" or "unserviceable" in grades.csv. */
    private static final Map<String, Set<String>> CHECKED = Map.of(
            "pfd", Set.of("vest"),
            "paddle", Set.of("paddle", "canoe-paddle", "paddle-throwaway", "oars"),
            "cart-check", Set.of("cart", "cart-balloon"));

    ComingGear {
        counts = Map.copyOf(counts);
    }

    static ComingGear of(CandidateData data) {
        Map<String, Integer> counts = new TreeMap<>(data.listing().included());
        for (Finding each : data.findings()) {
            boolean absent = each.outcome() == Outcome.MAJOR || each.outcome() == Outcome.STOP;
            boolean unfit = absent && each.quote() == null;
            if (unfit && CHECKED.containsKey(each.check())) {
                counts.keySet().removeAll(CHECKED.get(each.check()));
            }
        }
        return new ComingGear(counts);
    }

    static ComingGear none() {
        return new ComingGear(Map.of());
    }

    int count(String... ids) {
        int sum = 0;
        for (String each : ids) {
            sum += counts.getOrDefault(each, 0);
        }
        return sum;
    }

    /**
     * Tells what the gear adds to a fair price: each piece that this buyer would otherwise buy is useful, the rest is not.
     *
     * @param prices the price book in the shortlist's currency
     * @param needs what the buyer would need if nothing came with the boat
     */
    List<PricedBoat.Extra> extras(PriceBook prices, Map<Need, Integer> needs) {
        List<PricedBoat.Extra> extras = new ArrayList<>();
        new TreeMap<>(counts).forEach((id, count) -> prices.item(id)
                .filter(item -> item.group() == CostGroup.READY && item.unit() == PriceItem.Unit.MONEY)
                .ifPresent(item -> {
                    int useful = Math.min(count, needs.getOrDefault(item.when(), 0));
                    add(extras, item, useful, true);
                    add(extras, item, count - useful, false);
                }));
        return extras;
    }

    private static void add(List<PricedBoat.Extra> extras, PriceItem item, int count, boolean useful) {
        if (count > 0) {
            extras.add(new PricedBoat.Extra(item.label(), count * item.each().likely(), useful));
        }
    }
}
