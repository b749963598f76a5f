package org.keelweigh.ui.trip;

import org.keelweigh.shortlist.Bound;
import org.keelweigh.ui.format.Quantity;

/** In which money terms to think. */
final class MoneySection extends Sheet {

    MoneySection(Desk desk, Fields fields) {
        super("Money terms", "Everything is counted in today's money. These decide how the five-year cost adds up.");
        String currency = desk.data().currency();
        add(row(
                fields.quantity(
                        "trip.budget",
                        "Cash before the first launch",
                        Quantity.MONEY,
                        Bound.MONEY,
                        "Boat, fetching, repairs and missing kit together"),
                fields.whole("trip.horizonYears", "Years you keep it", Bound.YEARS),
                fields.quantity("trip.discountRate", "Real discount rate a year", Quantity.PERCENT, Bound.RATE),
                fields.quantity("trip.salesTax", "Sales tax", Quantity.PERCENT, Bound.RATE)));
        if (!"USD".equals(currency)) {
            add(row(fields.quantity(
                    "trip.priceFactor",
                    currency + " for one US dollar",
                    Quantity.NUMBER,
                    Bound.PRICE_FACTOR,
                    "Turns the price book, which is in US dollars, into your money")));
        }
    }
}
