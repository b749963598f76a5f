package org.keelweigh.exchange;

import org.keelweigh.appraisal.BoatOffer;
import org.keelweigh.appraisal.Tie;
import org.keelweigh.shortlist.Display;

/** Says at which price a boat ties with the best other one. */
final class BreakEvenWords {

    private BreakEvenWords() {}

    static String of(BoatOffer offer, Display display) {
        return switch (offer) {
            case BoatOffer.None none -> none.reason();
            case BoatOffer.Offer made ->
                switch (made.tie()) {
                    case Tie.At(double price) -> "Ties with the best other boat at " + display.money(price) + ".";
                    case Tie.AtAnyPrice(double upTo) ->
                        "Stays the best at any price up to " + display.money(upTo) + ".";
                    case Tie.AtNoPrice none -> "Another boat is worth more even if this one were a gift.";
                    case Tie.NoOther none -> "There is no other boat to compare it with.";
                };
        };
    }
}
