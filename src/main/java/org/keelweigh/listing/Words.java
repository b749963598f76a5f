package org.keelweigh.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds kind, material and drive from the words of the trade, not from makers' names. */
final class Words {

    private static final Pattern ELSEWHERE =
            Pattern.compile("\\b(?:swap|swop|trade|exchange|instead of|than an?|looking for|wanted|similar to"
                    + "|upgrading to|not an?|isn't an?|never an?|part ex)\\b[^.;]{0,30}$");
    private static final Pattern DENIED = Pattern.compile("\\b(?:no|not|without|non)[ -]$");
    private static final Pattern LEFT_OUT = Pattern.compile("^,? (?:is )?not (?:incl|for sale|part)");
    private static final Pattern PART_AFTER =
            Pattern.compile("^(?: (?:shaft|fibre|fiber|blade|framed?))?[ -](?:paddles?(?! ?board)|oars?|shaft"
                    + "|seats?|trailers?|frame|cart|trolley|fins?|trim|gunwales?|thwarts?|floor|rack"
                    + "|shed|rudder|bottom|helmet)\\b");

    private static final Pattern INFLATABLE =
            Pattern.compile("\\b(?:inflatable|blow[- ]?up|drop[- ]?stitch|i-?sup)\\b");
    private static final Pattern BOARD =
            Pattern.compile("\\b(?:i-?sup|sup|paddle ?boards?|stand[- ]?up (?:paddle|board))\\b");
    private static final Pattern KAYAK = Pattern.compile("\\b(?:kayaks?|canoes?)\\b");

    private record Rule(String code, Pattern words, Certainty certainty, String note) {
        static Rule plain(String code, String words) {
            return new Rule(code, Pattern.compile("\\b(?:" + words + ")"), Certainty.PLAIN, "");
        }

        static Rule noted(String code, String words, Certainty certainty, String note) {
            return new Rule(code, Pattern.compile("\\b(?:" + words + ")"), certainty, note);
        }
    }

    private static final Rule PEDAL = Rule.plain(
            "pedal",
            "pedal(?:s|ling)?[ -]?(?:drive|kayak|boat|yak|craft|powered|driven)|pedal sit"
                    + "|propeller pedals|fin pedals|pedals?\\b");
    private static final List<Rule> HULLS = List.of(
            Rule.plain("sot", "sit[- ]?on[- ]?tops?\\b|sit[- ]on kayak|sot\\b"),
            Rule.plain("sink", "sit[- ]?in(?:side)?\\b|sit[- ]?insides?\\b|sink kayak\\b"),
            Rule.plain("canoe", "canoe\\b|canoes\\b"),
            Rule.plain("row", "row(?:ing)?[ -]?boat|row(?:ing)? (?:dinghy|skiff|shell|scull)|rowboat|jon boat"));
    private static final List<Rule> LIKELY_HULLS = List.of(
            Rule.noted(
                    "sink",
                    "(?:touring|sea|river|race|racing|white ?water|expedition|surf) kayak|creek ?boat",
                    Certainty.LIKELY,
                    "Such kayaks usually have a cockpit; the text does not say so."),
            Rule.noted("row", "dinghy\\b|skiff\\b|clinker\\b", Certainty.LIKELY, "Taken as a rowing boat."),
            Rule.noted(
                    "sot",
                    "fishing kayak|angling kayak",
                    Certainty.UNSURE,
                    "Fishing kayaks are mostly sit-on-tops; the text does not say so."),
            Rule.noted(
                    "sink",
                    "rec(?:reational)? kayak",
                    Certainty.UNSURE,
                    "Recreational kayaks mostly have a cockpit; the text does not say so."));

    private static final List<Rule> MATERIALS = List.of(
            Rule.plain("pe3", "(?:three|triple|3)[- ]?layer"),
            Rule.plain("pex", "cross[- ]?link(?:ed)?|xlpe\\b"),
            Rule.plain("absfoam", "abs foam|foam[- ]?core(?:d)? abs"),
            Rule.plain("thermo", "thermo[- ]?form(?:ed)?|abs\\b"),
            Rule.plain("ds", "drop[- ]?stitch"),
            Rule.plain("carbon", "carbon(?:[- ]?fib(?:re|er))?\\b"),
            Rule.plain("aramid", "aramid\\b"),
            Rule.plain(
                    "frp",
                    "fib(?:re|er)[- ]?glass|polyester\\b|vinyl ?ester\\b|grp\\b|frp\\b" + "|glass[- ]?fib(?:re|er)"),
            Rule.plain("alu", "alumini?um\\b|alu\\b|tin boat"),
            Rule.plain(
                    "wood",
                    "wood(?:en)?\\b|timber\\b|larch|spruce|cedar|ply(?:wood)?\\b|mahogany"
                            + "|marine ply\\b|strip[- ]?built"),
            Rule.noted(
                    "pe1",
                    "poly(?:ethylene|ethene)?\\b|roto[- ]?mou?ld(?:ed)?|plastic\\b|hdpe\\b|lldpe\\b",
                    Certainty.LIKELY,
                    "Taken as one layer; makers also mould three."),
            Rule.noted(
                    "tube",
                    "pvc\\b|hypalon\\b|air tubes?\\b|rubber\\b",
                    Certainty.LIKELY,
                    "Taken as air tubes; drop-stitch fabric is also coated so."));

    private static final Rule BOARD_FOAM = Rule.plain("eps", "epoxy|eps\\b|foam[- ]?core");

    private static final Rule MOTOR = Rule.plain(
            "emotor",
            "electric (?:trolling )?motor|trolling motor|electric (?:outboard|drive)|e[- ]?motor\\b|motor[iz]+ed");
    private static final Rule FINS = Rule.plain("fins", "fin[- ]?(?:drive|pedals?)|fins\\b|flippers?\\b|flapping");
    private static final Rule PROPELLER =
            Rule.plain("prop", "prop(?:eller)?[- ]?(?:pedal[- ])?drive|propellers?\\b|prop\\b");
    private static final Rule PADDLE_ONLY = Rule.plain("none", "paddle[- ]only|no pedals?\\b|without pedals?\\b");

    private record Hit(Rule rule, int start, int end) {}

    private final Source source;

    private Words(Source source) {
        this.source = source;
    }

    static List<Proposal> in(Source source) {
        Words words = new Words(source);
        List<Proposal> proposals = new ArrayList<>();
        Optional<Proposal> kind = words.kind();
        kind.ifPresent(proposals::add);
        String code = kind.flatMap(Proposal::text).orElse("");
        words.material(code).ifPresent(proposals::add);
        words.drive(code).ifPresent(proposals::add);
        return proposals;
    }

    private Optional<Proposal> kind() {
        Optional<Span> inflatable = first(INFLATABLE);
        Optional<Span> board = first(BOARD);
        Optional<Span> kayak = first(KAYAK);
        if (inflatable.isPresent() && board.isPresent()) {
            return Optional.of(kind("isup", inflatable.get(), board.get(), "", Certainty.PLAIN));
        }
        if (inflatable.isPresent() && kayak.isPresent()) {
            return Optional.of(kind("ikayak", inflatable.get(), kayak.get(), "", Certainty.PLAIN));
        }
        Optional<Hit> pedal = first(PEDAL);
        Optional<Hit> hull =
                HULLS.stream().flatMap(rule -> first(rule).stream()).min(Comparator.comparingInt(Hit::start));
        if (pedal.isPresent()) {
            String note = hull.isPresent() ? "The text also says " + words(hull.get()) + "; pedals decide." : "";
            return Optional.of(propose(Fact.KIND, pedal.get(), note));
        }
        if (board.isPresent() && hull.isEmpty()) {
            return Optional.of(kind(
                    "hsup",
                    board.get(),
                    board.get(),
                    "Nothing says that it is inflatable; taken as rigid.",
                    Certainty.LIKELY));
        }
        if (hull.isPresent()) {
            return Optional.of(propose(Fact.KIND, hull.get(), ""));
        }
        return LIKELY_HULLS.stream()
                .flatMap(rule -> first(rule).stream())
                .findFirst()
                .map(hit -> propose(Fact.KIND, hit, ""));
    }

    private Proposal kind(String code, Span one, Span other, String note, Certainty certainty) {
        int start = Math.min(one.start(), other.start());
        int end = Math.max(one.end(), other.end());
        boolean apart = end - start > 60;
        return source.propose(
                Fact.KIND,
                new Proposal.Text(code),
                apart ? other.start() : start,
                apart ? other.end() : end,
                note,
                certainty);
    }

    private Optional<Proposal> material(String kind) {
        boolean board = kind.equals("hsup");
        if (board) {
            Optional<Hit> foam = first(BOARD_FOAM);
            if (foam.isPresent()) {
                return foam.map(hit -> propose(Fact.MATERIAL, hit, ""));
            }
        }
        List<Hit> hits =
                MATERIALS.stream().flatMap(rule -> first(rule).stream()).toList();
        return hits.stream()
                .findFirst()
                .map(hit -> propose(
                        Fact.MATERIAL, hit, hits.size() > 1 ? "The text also says " + words(hits.get(1)) + "." : ""));
    }

    private Optional<Proposal> drive(String kind) {
        Optional<Hit> hit = first(MOTOR);
        if (hit.isEmpty() && kind.equals("pedal")) {
            hit = first(PROPELLER).or(() -> first(FINS));
        }
        return hit.or(() -> first(PADDLE_ONLY)).map(found -> propose(Fact.DRIVE, found, ""));
    }

    private Proposal propose(Fact fact, Hit hit, String more) {
        String note = (hit.rule.note + " " + more).strip();
        return source.propose(fact, new Proposal.Text(hit.rule.code), hit.start, hit.end, note, hit.rule.certainty);
    }

    private String words(Hit hit) {
        return source.original().substring(hit.start, hit.end);
    }

    private Optional<Hit> first(Rule rule) {
        return first(rule.words).map(span -> new Hit(rule, span.start(), span.end()));
    }

    private Optional<Span> first(Pattern pattern) {
        Matcher matcher = pattern.matcher(source.plain());
        while (matcher.find()) {
            String before = source.sentenceBefore(matcher.start(), 45);
            if (!ELSEWHERE.matcher(before).find()
                    && !DENIED.matcher(before).find()
                    && !LEFT_OUT.matcher(source.sentenceAfter(matcher.end(), 24))
                            .find()
                    && !PART_AFTER
                            .matcher(source.sentenceAfter(matcher.end(), 24))
                            .find()) {
                return Optional.of(new Span(matcher.start(), matcher.end()));
            }
        }
        return Optional.empty();
    }
}
