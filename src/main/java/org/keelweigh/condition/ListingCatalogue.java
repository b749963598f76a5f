package org.keelweigh.condition;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.keelweigh.boat.Coded;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.CatalogueException;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;

/**
 * The signs about listings and sellers, how often things are wrong where boats are offered, and advice for meeting and
 * paying.
 *
 * <p>Read from the tables {@code listing-signals.csv}, {@code listing-base-rates.csv} and {@code safe-deal.csv}.
 */
public final class ListingCatalogue {

    /** Asking price below half of the fair price. */
    static final String PRICE_UNDER_HALF = "price-under-half";

    /** Asking price from 50 to 70 % of the fair price. */
    static final String PRICE_LOW = "price-half-to-seventy";

    /** Asking price from 70 to 130 % of the fair price. */
    static final String PRICE_USUAL = "price-usual";

    private static final List<String> PRICE_SIGNALS = List.of(PRICE_UNDER_HALF, PRICE_LOW, PRICE_USUAL);
    private static final double LEAST_BASE_RATE = 1e-6;
    private static final double GREATEST_BASE_RATE = 0.9;

    private final Map<String, ListingSignal> signals;
    private final Map<SellerKind, BaseRate> baseRates;
    private final List<Advice> advice;

    private ListingCatalogue(
            Map<String, ListingSignal> signals, Map<SellerKind, BaseRate> baseRates, List<Advice> advice) {
        this.signals = signals;
        this.baseRates = baseRates;
        this.advice = advice;
    }

    /**
     * Is how often things are wrong in one channel before anything else is known.
     *
     * @param channel where the boat is offered
     * @param fraud chance that there is no such boat or no such sale, in (0, 1)
     * @param stolen chance that the boat is stolen, in (0, 1)
     * @param source where the figures come from
     */
    public record BaseRate(SellerKind channel, double fraud, double stolen, String source) {

        static BaseRate of(Row row) {
            return new BaseRate(
                    Coded.parse(SellerKind.class, row.text("channel")),
                    row.number("fraud", LEAST_BASE_RATE, GREATEST_BASE_RATE),
                    row.number("stolen", LEAST_BASE_RATE, GREATEST_BASE_RATE),
                    row.text("source"));
        }
    }

    /**
     * Is a piece of advice.
     *
     * @param topic {@code meet} or {@code pay}
     * @param text the advice, a sentence
     * @param source where it comes from
     */
    public record Advice(String topic, String text, String source) {

        static Advice of(Row row) {
            return new Advice(row.text("topic"), row.text("advice"), row.text("source"));
        }
    }

    /**
     * Reads and validates the tables.
     *
     * @throws CatalogueException naming file and line of what is wrong
     */
    public static ListingCatalogue read(Catalogue catalogue) {
        Map<String, ListingSignal> signals = new LinkedHashMap<>();
        Table table = catalogue.table("listing-signals.csv").unique("signal");
        table.map(ListingSignal::of).forEach(each -> signals.put(each.id(), each));
        for (Row row : table.rows()) {
            for (String replaced : row.words("replaces")) {
                if (!signals.containsKey(replaced)) {
                    throw row.complaint("there is no signal \"" + replaced + "\" to replace");
                }
            }
        }
        for (String id : PRICE_SIGNALS) {
            if (!signals.containsKey(id)) {
                throw new CatalogueException(table.file(), 1, "there is no line for " + id);
            }
        }
        Map<SellerKind, BaseRate> rates = new EnumMap<>(SellerKind.class);
        Table channels = catalogue.table("listing-base-rates.csv").unique("channel");
        channels.map(BaseRate::of).forEach(each -> rates.put(each.channel(), each));
        for (SellerKind each : SellerKind.values()) {
            if (!rates.containsKey(each)) {
                throw new CatalogueException(channels.file(), 1, "there is no line for " + each.code());
            }
        }
        return new ListingCatalogue(
                signals, rates, catalogue.table("safe-deal.csv").map(Advice::of));
    }

    /** Tells all signs, group by group. */
    public List<ListingSignal> signals() {
        return List.copyOf(signals.values());
    }

    /** Tells the signs that a person can report; those about the price are computed. */
    public List<ListingSignal> signalsToAsk() {
        return signals.values().stream()
                .filter(each -> !PRICE_SIGNALS.contains(each.id()))
                .toList();
    }

    /** Finds a sign by its id. */
    public Optional<ListingSignal> signal(String id) {
        return Optional.ofNullable(signals.get(id));
    }

    /** Tells the advice for meeting and paying, in reading order. */
    public List<Advice> advice() {
        return advice;
    }

    BaseRate baseRate(SellerKind channel) {
        return baseRates.get(channel);
    }

    static boolean aboutPrice(String id) {
        return PRICE_SIGNALS.contains(id);
    }
}
