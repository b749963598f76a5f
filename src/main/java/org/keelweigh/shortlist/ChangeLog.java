package org.keelweigh.shortlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.SeatFacts;
import org.keelweigh.condition.Finding;

/** Says in plain sentences what changed between two states of a candidate. */
public final class ChangeLog {

    private static final String UNKNOWN = "not known";

    private final Display display;
    private final UnaryOperator<String> wordsOf;

    /**
     * Prepares the saying.
     *
     * @param display how figures are written
     * @param wordsOf the words for the id of a check, a sign, a piece of gear or a person
     */
    public ChangeLog(Display display, UnaryOperator<String> wordsOf) {
        this.display = display;
        this.wordsOf = wordsOf;
    }

    /** Tells every field in which {@code after} differs from {@code before}, one sentence each. */
    public List<String> between(CandidateData before, CandidateData after) {
        Map<String, String> from = fields(before);
        Map<String, String> to = fields(after);
        List<String> sentences = new ArrayList<>();
        for (String field : from.keySet()) {
            if (!to.containsKey(field)) {
                sentences.add(field + ": " + UNKNOWN + " any more; it was " + from.get(field) + ".");
            }
        }
        to.forEach((field, value) -> {
            String old = from.get(field);
            if (old == null) {
                sentences.add(field + ": " + value + ".");
            } else if (!old.equals(value)) {
                sentences.add(field + ": " + value + "; it was " + old + ".");
            }
        });
        return List.copyOf(sentences);
    }

    private Map<String, String> fields(CandidateData data) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("Name", "“" + data.name() + "”");
        fields.put("Kind", data.boat().kind().label());
        boat(fields, data);
        listing(fields, data);
        put(fields, "Hull number's plate", data.plate().state(), (d, state) -> state.replace('-', ' '));
        put(fields, "Hull number", data.plate().number(), (d, number) -> number);
        data.findings().forEach(each -> fields.put(wordsOf.apply(each.check()), finding(each)));
        data.liftedRulings()
                .forEach((rule, reason) ->
                        fields.put("Ruling “" + rule.replace('-', ' ') + "” lifted", "“" + reason + "”"));
        data.liking().forEach((person, liking) -> fields.put("Liking of " + wordsOf.apply(person), liking + " of 10"));
        put(fields, "Days to the first launch", data.daysToLaunch(), (d, days) -> days + " days");
        put(fields, "Notes", data.notes(), (d, notes) -> "“" + notes + "”");
        return fields;
    }

    private void boat(Map<String, String> fields, CandidateData data) {
        var boat = data.boat();
        put(fields, "Material", boat.material(), (d, material) -> material.label());
        put(fields, "Drive", boat.drive(), (d, drive) -> drive.label());
        put(fields, "Model year", boat.modelYear(), (d, year) -> String.valueOf(year));
        put(fields, "Price new", boat.priceNew(), Display::money);
        put(fields, "Length", boat.lengthM(), Display::length);
        put(fields, "Beam", boat.beamM(), Display::breadth);
        put(fields, "Hull alone", boat.bareMassKg(), Display::mass);
        put(fields, "Seats' mass", boat.seatMassKg(), Display::mass);
        put(fields, "Drive's mass", boat.driveMassKg(), Display::mass);
        put(fields, "Battery's mass", boat.batteryMassKg(), Display::mass);
        put(fields, "Other fittings' mass", boat.fittingsMassKg(), Display::mass);
        put(fields, "Rated load", boat.ratedLoadKg(), Display::mass);
        put(fields, "Draught", boat.draughtM(), Display::breadth);
        for (int i = 0; i < boat.seats().size(); i++) {
            fields.put("Seat " + (i + 1), seat(boat.seats().get(i)));
        }
    }

    private void listing(Map<String, String> fields, CandidateData data) {
        var listing = data.listing();
        put(fields, "Asking price", listing.askingPrice(), Display::money);
        put(fields, "Seller", listing.seller(), (d, seller) -> seller.label());
        put(fields, "Distance to the seller", listing.distanceM(), Display::way);
        put(fields, "Days listed", listing.daysListed(), (d, days) -> days + " days");
        listing.included()
                .forEach((gear, count) -> fields.put("Comes with " + wordsOf.apply(gear), count + " of them"));
        for (String sign : new TreeSet<>(listing.signals().keySet())) {
            boolean there = Boolean.TRUE.equals(listing.signals().get(sign));
            fields.put("Sign “" + wordsOf.apply(sign) + "”", there ? "yes" : "no");
        }
    }

    private String seat(SeatFacts seat) {
        String station =
                seat.stationM() == null ? "place " + UNKNOWN : display.length(seat.stationM()) + " from the stern";
        String width = seat.widthM() == null ? "width " + UNKNOWN : display.breadth(seat.widthM()) + " wide";
        return station + ", " + width;
    }

    private String finding(Finding finding) {
        List<String> words = new ArrayList<>(
                List.of(finding.outcome().label(), finding.method().label()));
        if (finding.measured() != null) {
            words.add(String.format(Locale.ROOT, "measured %s", Display.number(finding.measured(), 2)));
        }
        if (finding.quote() != null) {
            words.add("quoted at " + display.money(finding.quote().likely()));
        }
        if (finding.note() != null) {
            words.add("“" + finding.note() + "”");
        }
        return words.stream().collect(Collectors.joining(", "));
    }

    private <T> void put(
            Map<String, String> fields, String name, @Nullable T value, BiFunction<Display, T, String> write) {
        if (value != null) {
            fields.put(name, write.apply(display, value));
        }
    }
}
