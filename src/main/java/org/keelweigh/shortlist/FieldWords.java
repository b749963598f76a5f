package org.keelweigh.shortlist;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** Names the fields of documents in the words people read, wherever a field is spoken of. */
public final class FieldWords {

    /** Names where the path's own words would not do; all others are the path's last name, without its unit. */
    private static final Map<String, String> NAMES = Map.ofEntries(
            entry("boat.bareMassKg", "hull alone"),
            entry("boat.seatMassKg", "seats' mass"),
            entry("boat.driveMassKg", "drive's mass"),
            entry("boat.batteryMassKg", "battery's mass"),
            entry("boat.fittingsMassKg", "other fittings' mass"),
            entry("listing.distanceM", "distance to the seller"),
            entry("plate.state", "hull number's plate"),
            entry("plate.number", "hull number"),
            entry("daysToLaunch", "days to the first launch"),
            entry("trip.gearMassKg", "gear taken along"),
            entry("trip.gearOnCartKg", "gear on the cart"),
            entry("trip.weedLevel", "weed in the water"),
            entry("trip.launches", "launch sites"),
            entry("trip.horizonYears", "years of use"),
            entry("trip.storageLengthM", "length of the storage place"),
            entry("trip.car.lengthM", "car's length"),
            entry("trip.car.roofLimitKg", "car's roof limit"),
            entry("trip.car.barHeightM", "height of the roof bars"),
            entry("trip.car.barSpreadM", "spread of the roof bars"),
            entry("trip.car.hasBars", "roof bars"),
            entry("trip.car.rackMassKg", "mass of the bars and pads"),
            entry("trip.car.canTow", "car can tow"),
            entry("trip.cart.type", "kind of cart"),
            entry("trip.cart.ratedKg", "cart's rating"),
            entry("trip.cart.owned", "own cart"),
            entry("haulLimitN", "pulling limit"),
            entry("liftLimitKg", "lifting limit"),
            entry("visit.startedAt", "start of the visit"),
            entry("visit.minutes", "minutes of the visit"),
            entry("visit.place", "place of the visit"),
            entry("visit.present", "who was there"),
            entry("visit.seller", "seller's name"),
            entry("visit.buyer", "buyer's name"),
            entry("visit.included", "what goes with the boat"),
            entry("weights", "points of what matters"),
            entry("weightSet", "starting points"));

    /** What is named after the id that follows. */
    private static final Map<String, String> BY_ID = Map.of(
            "findings.", "%s",
            "listing.signals.", "sign “%s”",
            "listing.included.", "comes with %s",
            "liftedRulings.", "ruling “%s” lifted",
            "liking.", "liking of %s",
            "weights.", "points for %s",
            "visit.answers.", "answer to “%s”");

    private static final List<String> UNITS = List.of("M", "Kg", "N");
    private static final Pattern HUMP = Pattern.compile("(?=[A-Z])");

    private final UnaryOperator<String> wordsOf;

    /**
     * Prepares the naming.
     *
     * @param wordsOf the words for the id of a check, a sign, a piece of gear or a person
     */
    public FieldWords(UnaryOperator<String> wordsOf) {
        this.wordsOf = wordsOf;
    }

    /** Names a field by its path, such as "length" for {@code boat.lengthM}. */
    public String of(String path) {
        String known = NAMES.get(path);
        if (known != null) {
            return known;
        }
        return BY_ID.entrySet().stream()
                .filter(each -> path.startsWith(each.getKey()))
                .findFirst()
                .map(each -> each.getValue()
                        .formatted(words(path.substring(each.getKey().length()))))
                .orElseGet(() -> ownWords(path.substring(path.lastIndexOf('.') + 1)));
    }

    /** The id may be followed by a field of what it names, such as the outcome of a check. */
    private String words(String rest) {
        int point = rest.indexOf('.');
        if (point >= 0) {
            return words(rest.substring(0, point)) + ", " + of(rest.substring(point + 1));
        }
        return wordsOfId(rest);
    }

    private String wordsOfId(String id) {
        String found = wordsOf.apply(id);
        return found.equals(id) ? id.replace('-', ' ') : found;
    }

    private static String ownWords(String name) {
        List<String> humps = List.of(HUMP.split(name));
        List<String> kept =
                humps.size() > 1 && UNITS.contains(humps.getLast()) ? humps.subList(0, humps.size() - 1) : humps;
        return String.join(" ", kept).toLowerCase(Locale.ROOT);
    }
}
