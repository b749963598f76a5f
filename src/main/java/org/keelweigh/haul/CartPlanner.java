package org.keelweigh.haul;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.keelweigh.quantity.FigureWriter;

/**
 * Plans how boats get to the water: the pull, what the cart has to bear, how many people, and which cart serves them
 * all.
 */
public final class CartPlanner {

    /** Hands at 0.89 m, 60 m, once in two hours. */
    /** A dearer cart is bought when it saves at least this share of a person's limit: estimate. */
    private static final double WORTH_PAYING_FOR = 0.1;

    private static final PushCapability OCCASIONAL = PushCapability.of(0.89, 60, 1.0 / 120);

    private final HaulCatalogue catalogue;
    private final FigureWriter in;

    /**
     * Makes a planner.
     *
     * @param catalogue carts and surfaces
     * @param in writes the figures of its sentences
     */
    public CartPlanner(HaulCatalogue catalogue, FigureWriter in) {
        this.catalogue = catalogue;
        this.in = in;
    }

    /**
     * Plans one boat's way. Every stretch is taken both ways; the worst one governs.
     *
     * @throws IllegalArgumentException if a stretch names a surface that the catalogue does not have, or the axle is
     *     said to stand ahead of the grip
     */
    public CartAnswer plan(CartRequest request) {
        List<String> assumed = new ArrayList<>();
        List<Hauler> haulers = haulers(request, assumed);
        if (request.inBag()) {
            return BagCarry.of(request, haulers, assumed, in);
        }
        if (request.cart() != null) {
            return planOn(request, request.cart(), false, haulers, assumed);
        }
        CartInHand usual = oneForAll(
                        List.of(new NamedRequest(request.boat().kind().label(), request)))
                .cart()
                .map(CartInHand::of)
                .orElseGet(() -> strongest(leastBad(request)));
        assumed.add("Nobody named the cart; assumed a " + usual.type().label() + ".");
        return planOn(request, usual, true, haulers, assumed);
    }

    /**
     * Finds the kind of cart that serves every boat over its way: it holds the hull, avoids none of the surfaces, does no
     * harm to it, is sold with the rating needed, and needs no more people than any other kind would at best. Of those it
     * takes the cheapest that is as easy as the easiest within a tenth of a person's limit. Boats in bags need none.
     *
     * <p>So a heavier boat never gets an easier way by more than that tenth: the easiest effort is the least of rising
     * functions over a set of carts that only shrinks.
     *
     * @param requests the boats with their names; a cart named in a request is left out of account
     */
    public OneCart oneForAll(List<NamedRequest> requests) {
        List<NamedRequest> rolling =
                requests.stream().filter(each -> !each.request().inBag()).toList();
        if (rolling.isEmpty()) {
            return OneCart.none("None of these boats needs a cart: they travel in their bags.", List.of());
        }
        List<OneCart.Trial> trials =
                catalogue.carts().stream().map(cart -> attempt(cart, rolling)).toList();
        return best(trials)
                .map(each -> OneCart.chosen(each, trials, rolling.size(), in))
                .orElseGet(() -> OneCart.none(
                        "No single kind of cart in the catalogue serves every boat over this way.", trials));
    }

    private static Optional<OneCart.Trial> best(List<OneCart.Trial> trials) {
        List<OneCart.Trial> serving =
                trials.stream().filter(OneCart.Trial::serves).toList();
        int people = serving.stream().mapToInt(OneCart.Trial::people).min().orElse(1);
        List<OneCart.Trial> fewest =
                serving.stream().filter(each -> each.people() == people).toList();
        double easiest =
                fewest.stream().mapToDouble(OneCart.Trial::effort).min().orElse(0);
        return fewest.stream()
                .filter(each -> each.effort() <= easiest + WORTH_PAYING_FOR)
                .min(Comparator.comparingDouble(OneCart.Trial::price).thenComparingDouble(OneCart.Trial::effort));
    }

    private OneCart.Trial attempt(CartType cart, List<NamedRequest> rolling) {
        List<String> against = new ArrayList<>();
        int people = 1;
        double effort = 0;
        double worstPullN = 0;
        double neededKg = 0;
        for (NamedRequest each : rolling) {
            Optional<String> unfit = unfit(cart, each);
            if (unfit.isPresent()) {
                against.add(unfit.get());
                continue;
            }
            CartPlan plan = trial(cart, each.request());
            effort = Math.max(effort, effort(plan));
            worstPullN = Math.max(worstPullN, plan.worstPullN());
            neededKg = Math.max(neededKg, plan.neededRatingKg());
            people = Math.max(people, plan.verdict() == CartVerdict.ONE_PERSON ? 1 : 2);
            if (plan.verdict() == CartVerdict.NOT_BY_CART) {
                against.add(each.name() + ": " + plan.reasons().getFirst());
            }
        }
        return new OneCart.Trial(cart, people, effort, worstPullN, neededKg, against);
    }

    private static double effort(CartPlan plan) {
        return plan.haulers().stream().mapToDouble(HaulerAnswer::effort).min().orElseThrow();
    }

    private CartPlan trial(CartType cart, CartRequest request) {
        List<String> ignored = new ArrayList<>();
        return planOn(request, strongest(cart), false, haulers(request, ignored), ignored);
    }

    private static CartInHand strongest(CartType cart) {
        return new CartInHand(cart, cart.ratedKg().high(), true, null);
    }

    private Optional<String> unfit(CartType cart, NamedRequest each) {
        if (!cart.fits().contains(each.request().boat().kind())) {
            return Optional.of(each.name() + ": it does not hold a "
                    + each.request().boat().kind().label() + ".");
        }
        if (cart.hold() == CartHold.SOCKETS || cart.hold() == CartHold.KEEL) {
            return Optional.of(each.name() + ": only hulls made for it take it; ask the boat's maker.");
        }
        if (cart.loadsDrainHoles(each.request().boat().kind())) {
            return Optional.of(each.name() + ": its posts would load the rims of the drain holes.");
        }
        return grounds(each.request()).stream()
                .filter(ground -> ground.rolled()
                        && cart.avoid().contains(ground.surface().code()))
                .findFirst()
                .map(ground -> each.name() + ": it should not go over "
                        + ground.surface().label() + ".");
    }

    /** Where no cart serves, the one that is sold strongest stands in, of those that fit hull and ground if there are any. */
    private CartType leastBad(CartRequest request) {
        NamedRequest named = new NamedRequest(request.boat().kind().label(), request);
        Comparator<CartType> weakest =
                Comparator.comparingDouble(each -> each.ratedKg().high());
        Comparator<CartType> hardest =
                Comparator.comparingDouble(each -> -trial(each, request).worstPullN());
        List<CartType> holding = catalogue.carts().stream()
                .filter(each -> each.fits().contains(request.boat().kind()))
                .toList();
        List<CartType> fit =
                holding.stream().filter(each -> unfit(each, named).isEmpty()).toList();
        return (fit.isEmpty() ? holding : fit)
                .stream()
                        .max(weakest.thenComparing(hardest))
                        .orElseThrow(() -> new IllegalArgumentException("No cart of the catalogue holds a "
                                + request.boat().kind().label()));
    }

    private CartPlan planOn(
            CartRequest request, CartInHand cart, boolean cartAssumed, List<Hauler> haulers, List<String> assumed) {
        List<Ground> grounds = grounds(request);
        grounds.forEach(each -> assumed.addAll(each.assumptions()));
        Rig rig = Rig.of(request, cart.type());
        AxleAdvice axle = rig.advise(
                grounds.stream().filter(Ground::rolled).map(Ground::rolledPart).toList());
        double axleM = cart.axleStationM() == null ? axle.stationM() : cart.axleStationM();
        if (cart.axleStationM() == null) {
            assumed.add("Nobody measured where the axle stands; it is taken to stand at its best place, "
                    + in.length(axleM) + " from the stern.");
        }
        List<Leg> legs =
                grounds.stream().flatMap(each -> legs(each, rig, axleM)).toList();
        CartJudgement judgement = CartJudgement.of(rig, cart, legs, haulers, in);
        return new CartPlan(
                judgement.verdict(),
                judgement.reasons(),
                rig.load(),
                cart.type(),
                cartAssumed,
                axleM,
                rig.gripStationM(),
                rig.gripHeightM(),
                axle,
                legs,
                worst(legs),
                judgement.neededRatingKg(),
                cart.countedRatingKg(),
                cart.type().loadsDrainHoles(request.boat().kind()),
                judgement.haulers(),
                assumed,
                judgement.cautions());
    }

    /** A way with stairs in it is rolled up to them and carried over them: two legs. */
    private static Stream<Leg> legs(Ground ground, Rig rig, double axleM) {
        Stream<Leg> rolled = ground.rolled() ? Stream.of(rig.roll(ground.rolledPart(), axleM)) : Stream.empty();
        Stream<Leg> carried =
                ground.carried() ? Stream.of(new Leg.Carried(ground, rig.boat().strippedMassKg() / 2)) : Stream.empty();
        return Stream.concat(rolled, carried);
    }

    private static int worst(List<Leg> legs) {
        return IntStream.range(0, legs.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> switch (legs.get(i)) {
                    case Leg.Rolled rolled -> rolled.pullN().likely();
                    case Leg.Carried carried -> Double.NEGATIVE_INFINITY;
                }))
                .orElse(0);
    }

    private List<Ground> grounds(CartRequest request) {
        List<Stretch> stretches =
                request.stretches().isEmpty() ? List.of(Stretch.named("The launch")) : request.stretches();
        return stretches.stream().map(each -> Ground.of(each, catalogue, in)).toList();
    }

    private List<Hauler> haulers(CartRequest request, List<String> assumed) {
        List<Hauler> haulers =
                request.haulers().isEmpty() ? List.of(Hauler.of("An average adult", null)) : request.haulers();
        haulers.stream()
                .filter(Hauler::assumed)
                .forEach(each -> assumed.add(each.name() + ": nobody gave a pull limit; assumed "
                        + in.force(each.pullLimitN())
                        + " over about " + in.way(60) + ". Published push equations put "
                        + "what three in four women keep up over that distance, now and then, at "
                        + in.force(OCCASIONAL.steadyN()) + ": test your own."));
        return haulers;
    }
}
