package org.keelweigh.appraisal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.Figure;
import org.keelweigh.condition.ConditionAssessment;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.RepairGroup;
import org.keelweigh.condition.RepairLine;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.cost.ConditionClass;
import org.keelweigh.cost.CostGroup;
import org.keelweigh.cost.DiscountRate;
import org.keelweigh.cost.Need;
import org.keelweigh.cost.OwnershipFacts;
import org.keelweigh.cost.PriceItem;
import org.keelweigh.cost.PriceRule;
import org.keelweigh.fit.LifeJackets;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import org.keelweigh.haul.CartAnswer;
import org.keelweigh.haul.CartPlan;
import org.keelweigh.haul.CartType;
import org.keelweigh.haul.RoofLoading;
import org.keelweigh.haul.RoofRack;
import org.keelweigh.quantity.Estimate;
import org.keelweigh.shortlist.StoragePlace;
import org.keelweigh.shortlist.Trip;

/** Finds out what has to be bought, mended and paid because of one boat, so that each thing is counted once. */
final class OwnershipNeeds {

    static final String HIDDEN = "repair-hidden";

    /** How many of the outings that people have in mind they make in the end: an estimate, no source. */
    static final Estimate OUTINGS_SPREAD = new Estimate(0.5, 1, 1.3);

    private static final String SALES_TAX = "sales-tax";
    private static final double PER_CENT = 100;
    private static final double CART_FROM_KG = 22;
    private static final double CART_FROM_M = 40;
    private static final double AID_FROM_RATIO = 1;
    /** Needs that the chosen cart fills, whatever its tyres; its price comes from carts.csv. */
    private static final Set<Need> CARTS = Set.of(Need.CART, Need.BALLOON_CART);

    private final Situation situation;
    private final Catalogues catalogues;
    private final Boat boat;
    private final ListingFacts listing;
    private final ConditionAssessment condition;
    private final CartAnswer cart;
    private final List<RoofLoading> loading;
    private final RoofRack rack;

    /** Looks at one boat as the listing describes it and as it gets to the water. */
    OwnershipNeeds(
            Situation situation,
            Catalogues catalogues,
            Boat boat,
            ListingFacts listing,
            ConditionAssessment condition,
            CartAnswer cart,
            List<RoofLoading> loading,
            RoofRack rack) {
        this.situation = situation;
        this.catalogues = catalogues;
        this.boat = boat;
        this.listing = listing;
        this.condition = condition;
        this.cart = cart;
        this.loading = loading;
        this.rack = rack;
    }

    /** Tells what a buyer needs to whom this gear comes with the boat. */
    Map<Need, Integer> needs(ComingGear gear) {
        Map<Need, Integer> needs = new EnumMap<>(Need.class);
        kit(needs, gear);
        if (cartToBuy(gear).isPresent()) {
            CARTS.forEach(each -> needs.put(each, 1));
        }
        transport(needs, gear);
        upkeep(needs, gear);
        return needs;
    }

    OwnershipFacts facts(ComingGear gear, int ageYears, Figure price, ConditionClass state) {
        Map<Need, Integer> needs = needs(gear);
        needs.keySet().removeAll(CARTS);
        List<PriceItem> typed = repairs();
        cartToBuy(gear).ifPresent(plan -> typed.add(price(plan)));
        return new OwnershipFacts(
                boat.kind(),
                boat.material(),
                boat.drive(),
                price.value(),
                price.isAssumed() ? price.reason() : "the asking price",
                Math.max(1, boat.priceNew().value()),
                ageYears,
                // faults found are mended or lived with as before, so a boat worse than good stays what it is
                state == ConditionClass.EXCELLENT ? ConditionClass.GOOD : state,
                false,
                needs,
                situation.outingsPerYear(),
                OUTINGS_SPREAD,
                (listing.distanceM() == null ? 0 : listing.distanceM()) / 1000,
                0,
                salt(situation.mainWater()),
                typed,
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

    private void kit(Map<Need, Integer> needs, ComingGear gear) {
        int people = Math.min(situation.paddlers().size(), boat.seats().size());
        lifeJackets(needs, gear);
        need(needs, Need.MISSING_SIGNAL, 1 - gear.count("signal-light"));
        need(needs, Need.MISSING_LOCK, 1 - gear.count("dry-bag-lock"));
        int paddles = people - gear.count("paddle", "canoe-paddle", "paddle-throwaway");
        switch (boat.kind()) {
            case CANOE -> need(needs, Need.MISSING_CANOE_PADDLE, paddles);
            case ROWING_BOAT -> need(needs, Need.MISSING_OARS, 1 - gear.count("oars", "paddle"));
            case PEDAL_KAYAK -> need(needs, Need.MISSING_CHEAP_PADDLE, paddles);
            case SIT_ON_TOP, SIT_INSIDE, INFLATABLE_BOARD, HARD_BOARD, INFLATABLE_KAYAK ->
                need(needs, Need.MISSING_PADDLE, paddles);
        }
        Waters hardest = situation.hardestWater();
        boolean open = hardest == Waters.SHELTERED_COAST || hardest == Waters.SMALL_SURF || hardest == Waters.LAKE_CHOP;
        need(needs, Need.OPEN_WATER, open ? 1 - gear.count("rescue-kit") : 0);
        boolean swamps = boat.kind() == BoatKind.SIT_INSIDE && open
                || boat.kind() == BoatKind.CANOE && hardest == Waters.WHITEWATER;
        need(needs, Need.SWAMPING, swamps ? 1 - gear.count("skirt-or-bags") : 0);
        boolean fishing = situation.paddlers().stream().anyMatch(each -> each.use() == PaddlingUse.FISH_SEATED);
        need(needs, Need.FISHING, fishing ? 1 - gear.count("anchor-fishing") : 0);
    }

    /** The throwable one is a rule of the USA; elsewhere one for each person is the usual advice. */
    private void lifeJackets(Map<Need, Integer> needs, ComingGear gear) {
        LifeJackets jackets = LifeJackets.required(
                LifeJackets.Craft.of(boat.kind()),
                boat.lengthM().value(),
                situation.paddlers().size());
        need(needs, Need.MISSING_VEST, jackets.wearable() - gear.count("vest"));
        boolean thrown = inTheUsa() && jackets.throwing() == LifeJackets.Throwing.ONE;
        need(needs, Need.MISSING_THROWABLE, thrown ? 1 - gear.count("throwable") : 0);
    }

    /** Tells the cart that the mechanics chose, unless there is one already or the boat is light and the way short. */
    private Optional<CartPlan> cartToBuy(ComingGear gear) {
        boolean there = situation.trip().cart().owned() || gear.count("cart", "cart-balloon") > 0;
        if (there || !(cart instanceof CartPlan plan)) {
            return Optional.empty();
        }
        double way = situation.stretches().stream()
                .mapToDouble(each -> each.distanceM() == null ? 0 : each.distanceM())
                .sum();
        boolean needed = boat.riggedMassKg() > CART_FROM_KG || way > CART_FROM_M;
        return needed && plan.cart().price().high() > 0 ? Optional.of(plan) : Optional.empty();
    }

    /** Prices the chosen cart; where it has to be stronger than its kind usually is, one of the dearer ones. */
    private PriceItem price(CartPlan plan) {
        CartType type = plan.cart();
        Estimate usual = type.price().times(situation.priceFactor());
        boolean strong = plan.neededRatingKg() > type.ratedKg().likely();
        return new PriceItem(
                "cart",
                "launch cart: " + type.label(),
                CostGroup.READY,
                PriceRule.ONCE,
                0,
                0,
                0,
                0,
                strong ? new Estimate(usual.likely(), usual.high(), usual.high()) : usual,
                PriceItem.Unit.MONEY,
                Need.ALWAYS,
                true,
                "the cart that the haul was worked out with; carts \"" + type.code() + "\" (" + type.source() + ")");
    }

    private void transport(Map<Need, Integer> needs, ComingGear gear) {
        if (!boat.kind().rigid()) {
            return;
        }
        Trip trip = situation.trip();
        boolean overRoof = rack.ratio().orElse(0) > 1;
        if (overRoof && Boolean.TRUE.equals(trip.car().canTow())) {
            need(needs, Need.TRAILER, 1 - gear.count("trailer"));
            return;
        }
        boolean hasBars = Boolean.TRUE.equals(trip.car().hasBars()) || gear.count("rack-bars") > 0;
        need(needs, Need.RACK_BARS, hasBars ? 0 : 1);
        need(needs, Need.CRADLE, 1 - gear.count("cradle-straps"));
        boolean allStruggle = loading.stream().noneMatch(each -> each.liftRatio() <= AID_FROM_RATIO);
        boolean alone = situation.people().size() < 2;
        need(needs, Need.LOADING_AID, allStruggle && alone ? 1 - gear.count("loading-aid") : 0);
    }

    private void upkeep(Map<Need, Integer> needs, ComingGear gear) {
        StoragePlace storage = situation.trip().storage();
        need(needs, Need.RENTED_STORAGE, storage == StoragePlace.RENTED ? 1 : 0);
        boolean outside = storage == StoragePlace.OUTDOORS || storage == StoragePlace.COVERED;
        need(needs, Need.STORED_OUTSIDE, outside ? 1 - gear.count("cover") : 0);
        boolean motor = boat.drive() == DriveKind.MOTOR;
        need(needs, Need.REGISTERED, motor ? 1 : 0);
        need(needs, Need.INSURED_MOTOR, motor ? 1 : 0);
        need(needs, Need.LITHIUM_BATTERY, motor && !batteryReplaced() ? 1 : 0);
        need(needs, Need.DECAL, inTheUsa() ? 1 : 0);
        need(needs, Need.LAUNCH_FEES, 1);
        need(needs, Need.TAXED, listing.seller() == SellerKind.SHOP || motor ? 1 : 0);
    }

    /** A battery found faulty is replaced among the repairs, and the new one outlasts the years. */
    private boolean batteryReplaced() {
        return condition.repairs().stream()
                .anyMatch(line -> line.group() == RepairGroup.BATTERY
                        && line.outcome() != Outcome.MINOR
                        && line.expectedShare() > 0);
    }

    private List<PriceItem> repairs() {
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

    private boolean inTheUsa() {
        return "USD".equals(situation.display().currency());
    }

    private static boolean salt(Waters water) {
        return water == Waters.SHELTERED_COAST || water == Waters.SMALL_SURF;
    }

    private static void need(Map<Need, Integer> needs, Need need, int count) {
        if (count > 0) {
            needs.put(need, count);
        }
    }
}
