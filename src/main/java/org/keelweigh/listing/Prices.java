package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds the asking price and the price when new, and keeps deposits, delivery and old asking prices out. */
final class Prices {

    private static final double LOWEST = 10;
    private static final double HIGHEST = 60_000;

    private static final String SYMBOL = "us\\$|ca\\$|au\\$|nz\\$|c\\$|a\\$|\\$|£|€|usd\\b|eur\\b|gbp\\b|cad\\b|aud\\b"
            + "|chf\\b|nzd\\b|sek\\b|nok\\b|dkk\\b";
    private static final String WORD = "dollars?\\b|bucks\\b|euros?\\b|quid\\b|pounds?\\b";
    private static final String LABEL =
            "asking(?: price)?|price(?:d)?(?: is| at)?|sell(?:ing)? for|selling at|like|want|take|"
                    + "accept|looking for|now|firm at|paid|cost|retail(?: was)?|rrp|msrp|was|(?:reduced"
                    + "|dropped|down) to|v?hb|vb|yours for|(?:goes?|let it go|letting it go) for"
                    + "|bought (?:it )?for|new|offers (?:over|around)";
    private static final String ENDING =
            "obo\\b|ono\\b|o\\.n\\.o|or best|or near(?:est)?|firm\\b|vb\\b|neg\\b|for (?:her"
                    + "|him|it|the lot|everything|both)\\b";
    private static final Pattern AMOUNT =
            Pattern.compile("(?:\\b(?<label>" + LABEL + ")[: ]{1,3}(?:over |around |about |only |price )?)?"
                    + "(?<before>" + SYMBOL + ")? ?(?<![\\d.,'/-])(?<number>" + WrittenNumber.MONEY_PATTERN
                    + ")(?<thousand> ?k\\b)?(?:[,.]?--?)? ?(?<after>"
                    + SYMBOL + "|" + WORD + ")? {0,2}(?<ending>" + ENDING + ")?");

    private static final Pattern NEW_WORD =
            Pattern.compile("\\b(?:paid|costs?|retail\\w*|rrp|msrp|originally|new|list price|(?:bought"
                    + "|got) (?:[a-z0-9]{1,10} ){0,4}for|worth|replacement|replacing)\\b");
    private static final Pattern NOT_NEW = Pattern.compile("\\b(?:like|as|nearly|almost|good as) new\\b");
    private static final Pattern NEW_AFTER = Pattern.compile("^ ?(?:brand )?new\\b(?! (?:paddle|seat|battery|cart))");
    private static final Pattern OLD_WORD = Pattern.compile("\\b(?:was|reduced from|down from|previously)\\b");
    private static final Pattern ASKING_WORD =
            Pattern.compile("\\b(?:asking|price|now|only|sell\\w*|(?:reduced|dropped|down) to|v?hb|vb|for"
                    + "|firm|accept|take|yours|want|like|looking for)\\b");
    private static final Pattern OTHER_BEFORE =
            Pattern.compile("\\b(?:deposit|delivery|shipping|postage|extra|save|each|per|tax|licen[cs]e"
                    + "|registration)\\b[^,;]{0,12}$");
    private static final Pattern OTHER_AFTER =
            Pattern.compile("^ ?(?:deposit|delivery|shipping|to hold|extra|more\\b|per\\b|an hour|worth"
                    + "|off\\b|postage|for (?:the )?(?:paddle|cart|delivery|trailer))");
    private static final Pattern GEAR_BEFORE = Pattern.compile(
            "\\b(?:vests?|paddles?|trolleys?|carts?|pumps?|seats?|covers?|bars|cradles?)\\b[^,;]{0,10}$");
    private static final Pattern EACH_AFTER = Pattern.compile("^ ?(?:each|apiece|more|extra)\\b");
    private static final Pattern NOT_MONEY_AFTER =
            Pattern.compile("^ ?-?(?:%|x\\b|yrs?\\b|years?|seasons?|months?|people|persons?|seats?|seater"
                    + "|paddles|vests|model|kayaks?|canoe|miles|km\\b|am\\b|pm\\b|days?|weeks?|times)");

    private static final Map<String, String> CODES = Map.ofEntries(
            Map.entry("us$", "USD"),
            Map.entry("ca$", "CAD"),
            Map.entry("c$", "CAD"),
            Map.entry("au$", "AUD"),
            Map.entry("a$", "AUD"),
            Map.entry("nz$", "NZD"),
            Map.entry("$", "USD"),
            Map.entry("£", "GBP"),
            Map.entry("€", "EUR"),
            Map.entry("dollar", "USD"),
            Map.entry("dollars", "USD"),
            Map.entry("bucks", "USD"),
            Map.entry("euro", "EUR"),
            Map.entry("euros", "EUR"),
            Map.entry("quid", "GBP"),
            Map.entry("pound", "GBP"),
            Map.entry("pounds", "GBP"));

    private enum Role {
        ASKING,
        NEW
    }

    private record Found(
            Role role, double amount, @Nullable String currency, int start, int end, int score, String note) {}

    private final Source source;
    private final Claims taken;
    private final List<Found> found = new ArrayList<>();
    private final Claims claims = new Claims();

    private Prices(Source source, Claims taken) {
        this.source = source;
        this.taken = taken;
    }

    static Prices in(Source source, Claims taken) {
        Prices prices = new Prices(source, taken);
        Matcher amount = AMOUNT.matcher(source.plain());
        int floor = 0;
        while (amount.find()) {
            if (prices.judge(amount, floor)) {
                floor = amount.end();
            }
        }
        return prices;
    }

    Claims claims() {
        return claims;
    }

    List<Proposal> proposals() {
        List<Proposal> proposals = new ArrayList<>();
        best(Role.ASKING).ifPresent(best -> proposals.add(propose(Fact.ASKING_PRICE, best)));
        best(Role.NEW).ifPresent(best -> proposals.add(propose(Fact.PRICE_NEW, best)));
        found.stream()
                .filter(each -> each.currency != null)
                .max(Comparator.comparingInt(Found::score).thenComparing(Found::start, Comparator.reverseOrder()))
                .ifPresent(each -> proposals.add(currency(each)));
        return proposals;
    }

    private Optional<Found> best(Role role) {
        return found.stream()
                .filter(each -> each.role == role)
                .max(Comparator.comparingInt(Found::score).thenComparing(Found::start, Comparator.reverseOrder()));
    }

    private Proposal propose(Fact fact, Found best) {
        String other = found.stream()
                .filter(each -> each.role == best.role && each.amount != best.amount)
                .findFirst()
                .map(each -> "The text also names "
                        + source.original().substring(each.start, each.end).strip() + ".")
                .orElse("");
        String note = (best.note + " " + other).strip();
        Certainty certainty = best.score >= 4 && note.isEmpty() ? Certainty.PLAIN : Certainty.LIKELY;
        return source.propose(fact, new Proposal.Quantity(best.amount), best.start, best.end, note, certainty);
    }

    private Proposal currency(Found each) {
        String words = source.plain().substring(each.start, each.end);
        boolean bareDollar = "USD".equals(each.currency) && !words.contains("us");
        return source.propose(
                Fact.CURRENCY,
                new Proposal.Text(String.valueOf(each.currency)),
                each.start,
                each.end,
                bareDollar ? "Dollars may also be Canadian, Australian or others." : "",
                bareDollar ? Certainty.LIKELY : Certainty.PLAIN);
    }

    private boolean judge(Matcher at, int floor) {
        int start = at.group("before") != null ? at.start("before") : at.start("number");
        int end = end(at);
        String currency = code(at.group("before") != null ? at.group("before") : at.group("after"));
        String label = at.group("label");
        if (currency == null && label == null && at.group("ending") == null || !taken.free(at.start("number"), end)) {
            return false;
        }
        WrittenNumber number = WrittenNumber.of(at.group("number"));
        double amount = number.asMoney() * (at.group("thousand") != null ? 1000 : 1);
        String after = source.clauseAfter(end, 24);
        if (amount < LOWEST
                || amount > HIGHEST
                || currency == null
                        && (notMoney(label, amount)
                                || NOT_MONEY_AFTER.matcher(after).find())) {
            return false;
        }
        claims.claim(start, end);
        String note =
                number.ambiguous() && (currency == null || at.group("number").contains("."))
                        ? "The comma or point is read as a thousands mark."
                        : "";
        assign(
                amount,
                currency,
                start,
                end,
                at.group("ending") != null,
                source.clauseBefore(start, 36, floor),
                after,
                note);
        return true;
    }

    private void assign(
            double amount,
            @Nullable String currency,
            int start,
            int end,
            boolean ending,
            String before,
            String after,
            String note) {
        if (OTHER_BEFORE.matcher(before).find()
                || OTHER_AFTER.matcher(after).find()
                || GEAR_BEFORE.matcher(before).find()
                        && EACH_AFTER.matcher(after).find()) {
            return;
        }
        int score = (currency != null ? 2 : 0) + (ending ? 2 : 0);
        String cleaned = NOT_NEW.matcher(before).replaceAll("");
        if (NEW_WORD.matcher(cleaned).find()
                        && !ASKING_WORD.matcher(afterLastNew(cleaned)).find()
                || NEW_AFTER.matcher(after).find()) {
            found.add(new Found(Role.NEW, amount, currency, start, end, score + 2, note));
        } else if (!OLD_WORD.matcher(before).find()) {
            int more = ASKING_WORD.matcher(before).find() ? 3 : 0;
            found.add(new Found(Role.ASKING, amount, currency, start, end, score + more, note));
        }
    }

    /** "new price 900" is a price when new; "paid a lot, now 900" is not: the later word counts. */
    private static String afterLastNew(String before) {
        Matcher word = NEW_WORD.matcher(before);
        int last = 0;
        while (word.find()) {
            last = word.end();
        }
        return before.substring(last).replaceFirst("^ (?:price|for)\\b", "");
    }

    private static int end(Matcher at) {
        for (String group : List.of("after", "thousand")) {
            if (at.group(group) != null) {
                return at.end(group);
            }
        }
        return at.end("number");
    }

    /** A bare number after "now" or "new" may be a year. */
    private static boolean notMoney(@Nullable String label, double amount) {
        boolean yearLike = amount >= 1950 && amount <= 2049 && amount == Math.rint(amount);
        return yearLike && (label == null || label.matches("new|now|was|like|take|want"));
    }

    private static @Nullable String code(@Nullable String written) {
        if (written == null) {
            return null;
        }
        String known = CODES.get(written);
        return known != null ? known : written.toUpperCase(Locale.ROOT);
    }
}
