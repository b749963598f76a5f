package org.keelweigh.cost;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.keelweigh.catalogue.Catalogue;

/**
 * What owning a small boat costs beside its price.
 *
 * @param items the items in the order to show them; ids are unique
 */
public record PriceBook(List<PriceItem> items) {

    public PriceBook {
        items = List.copyOf(items);
        Set<String> seen = new HashSet<>();
        for (PriceItem each : items) {
            if (!seen.add(each.id())) {
                throw new IllegalArgumentException("The price book holds the item " + each.id() + " twice");
            }
        }
    }

    /**
     * Reads {@code price-book.csv}.
     *
     * @param catalogue where the table is
     * @throws org.keelweigh.catalogue.CatalogueException naming file and line of what is wrong
     */
    public static PriceBook read(Catalogue catalogue) {
        return new PriceBook(catalogue.table("price-book.csv").unique("id").map(PriceItem::read));
    }

    /**
     * Makes the same book in another currency.
     *
     * @param factor units of that currency for one USD of 2025; above 0. Percentages stay as they are.
     */
    public PriceBook inCurrency(double factor) {
        Amounts.requirePositive("currency factor", factor);
        return new PriceBook(items.stream()
                .map(each -> each.unit() == PriceItem.Unit.MONEY
                        ? each.withEach(each.each().times(factor), each.why())
                        : each)
                .toList());
    }

    /** Finds an item by its id. */
    public Optional<PriceItem> item(String id) {
        return items.stream().filter(each -> each.id().equals(id)).findFirst();
    }
}
