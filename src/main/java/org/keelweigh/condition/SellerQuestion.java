package org.keelweigh.condition;

import java.util.List;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;

/**
 * A question to ask the seller at the boat, from the table {@code seller-questions.csv}.
 *
 * @param id its id
 * @param text the question
 * @param listenFor what a good answer sounds like
 * @param applies to which boats it applies
 * @param source where it comes from
 */
public record SellerQuestion(String id, String text, String listenFor, Applies applies, String source) {

    /**
     * Reads all questions in their order.
     *
     * @throws org.keelweigh.catalogue.CatalogueException naming file and line of what is wrong
     */
    public static List<SellerQuestion> read(Catalogue catalogue) {
        return catalogue.table("seller-questions.csv").unique("question").map(SellerQuestion::of);
    }

    private static SellerQuestion of(Row row) {
        return new SellerQuestion(
                row.text("question"), row.text("text"), row.text("listen"), Applies.of(row), row.text("source"));
    }
}
