package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.RepairLine;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.cost.ConditionClass;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.DiscountRate;
import org.keelweigh.cost.Need;
import org.keelweigh.cost.OwnershipFacts;
import org.keelweigh.cost.PriceItem;
import org.keelweigh.cost.PriceRule;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.haul.TyreClass;
import org.keelweigh.quantity.Estimate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/** Finds out what has to be bought, mended and paid because of one boat, so that each thing is counted once. */
final class OwnershipNeeds {

    static final String HIDDEN = "repair-hidden";

    private static final String SALES_TAX = "sales-tax";
    private static final double PER_CENT = 100;
    private static final double CART_FROM_KG = 22;
    private static final double CART_FROM_M = 40;
    private static final double AID_FROM_RATIO = 1.3;

    private final Situation situation;
    private final Catalogues catalogues;

    OwnershipNeeds(Situation situation, Catalogues catalogues) {
        this.situation = situation;
        this.catalogues = catalogues;
    }

    OwnershipFacts facts(
            Boat boat,
            CandidateData data,
            int ageYears,
            double price,
            ConditionClass state,
            ConditionAssessment condition,
            CartAnswer cart,
            List<RoofLoading> loading,
            RoofRack rack) {
        ListingFacts listing = data.listing();
        Map<Need, Integer> needs = new EnumMap<>(Need.class);
        kit(needs, boat, listing);
        cart(needs, boat, listing, cart);
        transport(needs, boat, listing, loading, rack);
        upkeep(needs, boat, listing);
        return new OwnershipFacts(
                boat.kind(),
                boat.material(),
                boat.drive(),
                price,
                Math.max(1, boat.priceNew().value()),
                ageYears,
                // faults found are mended or lived with as before, so a boat worse than good stays what it is
                state == ConditionClass.EXCELLENT ? ConditionClass.GOOD : state,
                false,
                needs,
                situation.outingsPerYear(),
                (listing.distanceM() == null ? 0 : listing.distanceM()) / 1000,
                0,
                salt(situation.mainWater()),
                repairs(condition),
                typedTax(),
                situation.horizonYears(),
                new DiscountRate(situation.discountRate()));
    }

    /** A typed rate stands in for the book's range; a shop's own book need not have the item. */
    private Map<String, Estimate> typedTax() {
        boolean typed = situation.trip().salesTax() != null
                && catalogues.prices().item(SALES_TAX).isPresent();
        return typed ? Map.of(SALES_TAX, Estimate.exactly(PER_CENT * situation.salesTax())) : Map.of();
    }

    /** Adds what unseen repairs cost on average, for the sum that people read; futures draw them one by one instead. */
    static OwnershipFacts withHidden(OwnershipFacts facts, double mean) {
        List<PriceItem> typed = new ArrayList<>(facts.typed());
        typed.add(PriceItem.typed(
                HIDDEN,
                "Repairs nobody has seen yet, on average",
                CostGroup.READY,
                PriceRule.ONCE,
                0,
                Estimate.exactly(Math.max(0, mean)),
                "chance times cost of every fault that was not looked for, given what was found"));
        return facts.withTyped(typed, facts.overrides());
    }

    private void kit(Map<Need, Integer> needs, Boat boat, ListingFacts listing) {
        int people = Math.min(situation.paddlers().size(), seats(boat));
        need(needs, Need.MISSING_VEST, situation.paddlers().size() - included(listing, "vest"));
        need(needs, Need.MISSING_SIGNAL, 1 - included(listing, "signal-light"));
        need(needs, Need.MISSING_LOCK, 1 - included(listing, "dry-bag-lock"));
        int paddles = people
                - included(listing, "paddle")
                - included(listing, "canoe-paddle")
                - included(listing, "paddle-throwaway");
        switch (boat.kind()) {
            case CANOE -> need(needs, Need.MISSING_CANOE_PADDLE, paddles);
            case ROWING_BOAT ->
                need(needs, Need.MISSING_OARS, 1 - included(listing, "oars") - included(listing, "paddle"));
            case PEDAL_KAYAK -> need(needs, Need.MISSING_CHEAP_PADDLE, paddles);
            case SIT_ON_TOP, SIT_INSIDE, INFLATABLE_BOARD, HARD_BOARD, INFLATABLE_KAYAK ->
                need(needs, Need.MISSING_PADDLE, paddles);
        }
        Waters hardest = situation.hardestWater();
        boolean open = hardest == Waters.SHELTERED_COAST || hardest == Waters.SMALL_SURF || hardest == Waters.LAKE_CHOP;
        need(needs, Need.OPEN_WATER, open ? 1 : 0);
        boolean swamps = boat.kind() == BoatKind.SIT_INSIDE && open
                || boat.kind() == BoatKind.CANOE && hardest == Waters.WHITEWATER;
        need(needs, Need.SWAMPING, swamps ? 1 - included(listing, "skirt-or-bags") : 0);
        boolean fishing = situation.paddlers().stream().anyMatch(each -> each.use() == PaddlingUse.FISH_SEATED);
        need(needs, Need.FISHING, fishing ? 1 - included(listing, "anchor-fishing") : 0);
    }

    private void cart(Map<Need, Integer> needs, Boat boat, ListingFacts listing, CartAnswer answer) {
        Trip trip = situation.trip();
        if (trip.cart().owned() || included(listing, "cart") > 0 || !(answer instanceof CartPlan plan)) {
            return;
        }
        double way = situation.stretches().stream()
                .mapToDouble(each -> each.distanceM() == null ? 0 : each.distanceM())
                .sum();
        if (boat.riggedMassKg() > CART_FROM_KG || way > CART_FROM_M) {
            need(needs, plan.cart().tyre() == TyreClass.BALLOON ? Need.BALLOON_CART : Need.CART, 1);
        }
    }

    private void transport(
            Map<Need, Integer> needs, Boat boat, ListingFacts listing, List<RoofLoading> loading, RoofRack rack) {
        if (!boat.kind().rigid()) {
            return;
        }
        Trip trip = situation.trip();
        boolean overRoof = rack.ratio().orElse(0) > 1;
        if (overRoof && Boolean.TRUE.equals(trip.car().canTow())) {
            need(needs, Need.TRAILER, 1 - included(listing, "trailer"));
            return;
        }
        boolean hasBars = Boolean.TRUE.equals(trip.car().hasBars()) || included(listing, "rack-bars") > 0;
        need(needs, Need.RACK_BARS, hasBars ? 0 : 1);
        need(needs, Need.CRADLE, 1 - included(listing, "cradle-straps"));
        boolean allStruggle = loading.stream().noneMatch(each -> each.liftRatio() <= AID_FROM_RATIO);
        boolean alone = situation.people().size() < 2;
        need(needs, Need.LOADING_AID, allStruggle && alone ? 1 : 0);
    }

    private void upkeep(Map<Need, Integer> needs, Boat boat, ListingFacts listing) {
        StoragePlace storage = situation.trip().storage();
        need(needs, Need.RENTED_STORAGE, storage == StoragePlace.RENTED ? 1 : 0);
        boolean outside = storage == StoragePlace.OUTDOORS || storage == StoragePlace.COVERED;
        need(needs, Need.STORED_OUTSIDE, outside ? 1 - included(listing, "cover") : 0);
        boolean motor = boat.drive() == DriveKind.MOTOR;
        need(needs, Need.REGISTERED, motor ? 1 : 0);
        need(needs, Need.INSURED_MOTOR, motor ? 1 : 0);
        need(needs, Need.LITHIUM_BATTERY, motor ? 1 : 0);
        need(needs, Need.DECAL, "USD".equals(situation.display().currency()) ? 1 : 0);
        need(needs, Need.LAUNCH_FEES, 1);
        need(needs, Need.TAXED, listing.seller() == SellerKind.SHOP || motor ? 1 : 0);
    }

    private List<PriceItem> repairs(ConditionAssessment condition) {
        List<PriceItem> items = new ArrayList<>();
        for (RepairLine line : condition.repairs()) {
            Estimate expected = line.expected().times(situation.priceFactor());
            if (expected.high() > 0) {
                String title = catalogues
                        .inspection()
                        .check(line.check())
                        .map(check -> check.title())
                        .orElse(line.check());
                items.add(PriceItem.typed(
                        "repair-" + line.check(),
                        "Repair: " + title,
                        CostGroup.READY,
                        PriceRule.ONCE,
                        0,
                        expected,
                        line.reason()));
            }
        }
        return items;
    }

    private static int seats(Boat boat) {
        return boat.seats().size();
    }

    private static boolean salt(Waters water) {
        return water == Waters.SHELTERED_COAST || water == Waters.SMALL_SURF;
    }

    private static int included(ListingFacts listing, String gear) {
        return listing.included().getOrDefault(gear, 0);
    }

    private static void need(Map<Need, Integer> needs, Need need, int count) {
        if (count > 0) {
            needs.put(need, count);
        }
    }
}
