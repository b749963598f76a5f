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
    private final FieldWords fieldWords;

    /**
     * Prepares the saying.
     *
     * @param display how figures are written
     * @param wordsOf the words for the id of a check, a sign, a piece of gear or a person
     */
    public ChangeLog(Display display, UnaryOperator<String> wordsOf) {
        this.display = display;
        this.fieldWords = new FieldWords(wordsOf);
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
        fields.put(named("name"), "“" + data.name() + "”");
        fields.put(named("boat.kind"), data.boat().kind().label());
        boat(fields, data);
        listing(fields, data);
        put(fields, "plate.state", data.plate().state(), (d, state) -> state.replace('-', ' '));
        put(fields, "plate.number", data.plate().number(), (d, number) -> number);
        data.findings().forEach(each -> fields.put(named("findings." + each.check()), finding(each)));
        data.liftedRulings().forEach((rule, reason) -> fields.put(named("liftedRulings." + rule), "“" + reason + "”"));
        data.liking().forEach((person, liking) -> fields.put(named("liking." + person), liking + " of 10"));
        put(fields, "daysToLaunch", data.daysToLaunch(), (d, days) -> days + " days");
        put(fields, "notes", data.notes(), (d, notes) -> "“" + notes + "”");
        return fields;
    }

    private void boat(Map<String, String> fields, CandidateData data) {
        var boat = data.boat();
        put(fields, "boat.material", boat.material(), (d, material) -> material.label());
        put(fields, "boat.drive", boat.drive(), (d, drive) -> drive.label());
        put(fields, "boat.modelYear", boat.modelYear(), (d, year) -> String.valueOf(year));
        put(fields, "boat.priceNew", boat.priceNew(), Display::money);
        put(fields, "boat.lengthM", boat.lengthM(), Display::length);
        put(fields, "boat.beamM", boat.beamM(), Display::breadth);
        put(fields, "boat.bareMassKg", boat.bareMassKg(), Display::mass);
        put(fields, "boat.seatMassKg", boat.seatMassKg(), Display::mass);
        put(fields, "boat.driveMassKg", boat.driveMassKg(), Display::mass);
        put(fields, "boat.batteryMassKg", boat.batteryMassKg(), Display::mass);
        put(fields, "boat.fittingsMassKg", boat.fittingsMassKg(), Display::mass);
        put(fields, "boat.ratedLoadKg", boat.ratedLoadKg(), Display::mass);
        put(fields, "boat.draughtM", boat.draughtM(), Display::breadth);
        for (int i = 0; i < boat.seats().size(); i++) {
            fields.put("Seat " + (i + 1), seat(boat.seats().get(i)));
        }
    }

    private void listing(Map<String, String> fields, CandidateData data) {
        var listing = data.listing();
        put(fields, "listing.askingPrice", listing.askingPrice(), Display::money);
        put(fields, "listing.seller", listing.seller(), (d, seller) -> seller.label());
        put(fields, "listing.distanceM", listing.distanceM(), Display::way);
        put(fields, "listing.daysListed", listing.daysListed(), (d, days) -> days + " days");
        listing.included().forEach((gear, count) -> fields.put(named("listing.included." + gear), count + " of them"));
        for (String sign : new TreeSet<>(listing.signals().keySet())) {
            boolean there = Boolean.TRUE.equals(listing.signals().get(sign));
            fields.put(named("listing.signals." + sign), there ? "yes" : "no");
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
            Map<String, String> fields, String path, @Nullable T value, BiFunction<Display, T, String> write) {
        if (value != null) {
            fields.put(named(path), write.apply(display, value));
        }
    }

    private String named(String path) {
        String words = fieldWords.of(path);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
