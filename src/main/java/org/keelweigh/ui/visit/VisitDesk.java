package org.keelweigh.ui.visit;

import com.vaadin.flow.component.UI;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.CheckOutlook;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Standing;
import org.keelweigh.appraisal.VisitGuide;
import org.keelweigh.appraisal.VisitRoute;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.condition.SellerQuestion;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.VisitNotes;
import org.keelweigh.shortlist.VisitOrder;
import org.keelweigh.ui.shell.Latest;
import org.keelweigh.ui.shell.SaveNews;
import org.keelweigh.ui.shell.Visitor;

/** One boat under visit: what is known of it now, and how new knowledge is saved. */
final class VisitDesk {

    /** Used until somebody says how long they have. */
    static final int USUAL_MINUTES = 45;

    private final VisitServices services;
    private final CandidateId boat;
    private final Latest<Measured> measuring;
    private final Latest<NextChecks> advising;
    private Facts facts;
    private Measured measured;
    private List<Photo> photos;
    private VisitNotes notes;
    private Optional<NextChecks> advice = Optional.empty();
    private Runnable onChange = () -> {};

    VisitDesk(VisitServices services, Facts facts, CandidateId boat) {
        this.services = services;
        this.facts = facts;
        this.boat = boat;
        measuring = new Latest<>(services.background(), "what a visit's findings change");
        advising = new Latest<>(services.background(), "what could change the choice");
        measured = services.appraisal().measure(facts);
        photos = services.album().photos(boat);
        notes = services.book().notes(boat);
    }

    /** Has {@code changed} follow whenever something is worked out anew, what the order asks for to begin with. */
    void onChange(Runnable changed) {
        onChange = changed;
        advise();
    }

    /**
     * Takes facts in at once; what follows from them is worked out meanwhile, and newer facts overtake. Answers whether
     * anything is new that the page shows.
     */
    boolean hear(Facts now) {
        boolean news = adopt(now);
        return reread() || news;
    }

    private boolean adopt(Facts now) {
        boolean news = !now.equals(facts);
        facts = now;
        if (news) {
            page().ifPresent(ui -> measuring.ask(ui, () -> services.appraisal().measure(now), found -> {
                measured = found;
                onChange.run();
                advise();
            }));
        }
        return news;
    }

    /** Reads again what is kept beside the facts. */
    private boolean reread() {
        List<Photo> albumNow = services.album().photos(boat);
        VisitNotes notesNow = services.book().notes(boat);
        boolean news = !albumNow.equals(photos) || !notesNow.equals(notes);
        photos = albumNow;
        notes = notesNow;
        return news;
    }

    private void advise() {
        if (order() == VisitOrder.CHOICE) {
            Measured now = measured;
            page().ifPresent(ui -> advising.ask(
                    ui,
                    () -> services.appraisal()
                            .nextChecks(now.facts(), now.perspectives().getFirst()),
                    found -> {
                        advice = Optional.of(found);
                        onChange.run();
                    }));
        }
    }

    private static Optional<UI> page() {
        return Optional.ofNullable(UI.getCurrent());
    }

    Facts facts() {
        return facts;
    }

    Candidate candidate() {
        return facts.candidate(boat).orElseThrow(() -> new NoSuchElementException("This boat has been deleted"));
    }

    String name() {
        return candidate().data().name();
    }

    Measured measured() {
        return measured;
    }

    BoatReport report() {
        return measured.boats().stream()
                .filter(each -> each.id().equals(boat))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("This boat has been deleted"));
    }

    Standing standing() {
        return Standing.of(measured, boat);
    }

    InspectionCatalogue inspection() {
        return services.appraisal().catalogues().inspection();
    }

    VisitGuide guide() {
        return services.guide();
    }

    PhotoAlbum album() {
        return services.album();
    }

    ShortlistEditing editing() {
        return services.editing();
    }

    Instant now() {
        return services.clock().instant();
    }

    List<Photo> photos() {
        return photos;
    }

    /** Tells the photos of one check. */
    List<Photo> photos(Check check) {
        return photos.stream().filter(photo -> check.id().equals(photo.check())).toList();
    }

    VisitNotes notes() {
        return notes;
    }

    /**
     * Writes an edit of the notes down.
     *
     * @param seen the notes as the page showed them
     * @param edit what was changed
     * @param after hears when the notes are as they are kept now, ours or theirs
     */
    void note(VisitNotes seen, UnaryOperator<VisitNotes> edit, Runnable after) {
        Saved<VisitNotes> saved = services.book().save(boat, seen, edit.apply(seen), Visitor.name());
        if (!(saved instanceof Saved.Gone)) {
            notes = saved.current();
            after.run();
        }
        SaveNews.tell(saved, words(), () -> {
            if (saved instanceof Saved.Gone) {
                services.editing().restore(boat, Visitor.name());
            }
            notes = services.book().notes(boat);
            note(notes, edit, after);
        });
    }

    /** Starts the clock. */
    void begin() {
        Instant now = now();
        note(notes, before -> before.begun(now, minutes()), () -> {});
        open(null);
    }

    private ClashWords words() {
        Map<String, String> questions = guide().questions(report().boat()).stream()
                .collect(Collectors.toMap(SellerQuestion::id, SellerQuestion::text));
        return new ClashWords(measured.situation().display(), id -> questions.getOrDefault(id, id));
    }

    int minutes() {
        return minutes(notes);
    }

    static int minutes(VisitNotes notes) {
        Integer chosen = notes.minutes();
        return chosen == null ? USUAL_MINUTES : chosen;
    }

    VisitOrder order() {
        VisitOrder chosen = notes.order();
        return chosen == null ? VisitOrder.WALK : chosen;
    }

    /** Takes another order from the first check on. */
    void order(VisitOrder other) {
        notes = services.book().move(boat, now -> now.onTheWay(other, null, now.skipped()));
        advise();
    }

    /** Tells the check that was open last. */
    Optional<Check> at() {
        return checks().stream().filter(each -> each.id().equals(notes.at())).findFirst();
    }

    /** Remembers which check is open, for whoever looks again later; none when all are made. */
    void open(@Nullable Check check) {
        String at = check == null ? null : check.id();
        if (!Objects.equals(at, notes.at())) {
            notes = services.book().move(boat, now -> now.onTheWay(now.order(), at, now.skipped()));
        }
    }

    /** Tells whether the order asked for is still being worked out. */
    boolean awaitsAdvice() {
        return order() == VisitOrder.CHOICE && advice.isEmpty();
    }

    /** Tells what checks on a boat could do to the choice, as far as that is asked for and known. */
    List<CheckOutlook> outlooks(CandidateId which) {
        List<CandidateId> boats = measured.boats().stream().map(BoatReport::id).toList();
        return order() == VisitOrder.CHOICE
                ? advice.map(found -> found.on(boats.indexOf(which))).orElse(List.of())
                : List.of();
    }

    /** Tells what a check on this boat could do to the choice, if that is asked for and known. */
    Optional<CheckOutlook> outlook(Check check) {
        return outlooks(boat).stream()
                .filter(each -> each.check().id().equals(check.id()))
                .findFirst();
    }

    /** Tells the checks that apply, in zone order, made or not. */
    List<Check> checks() {
        return services.guide().checks(report().boat());
    }

    Optional<Finding> finding(String check) {
        return candidate().data().findings().stream()
                .filter(each -> each.check().equals(check))
                .findFirst();
    }

    /** Tells the checks still to make: first those that fit into the time that is left. */
    VisitRoute route() {
        Instant start = notes().startedAt();
        long gone = start == null ? 0 : Duration.between(start, now()).toMinutes();
        return VisitRoute.of(report().condition(), Math.max(0, minutes() - gone), order(), outlooks(boat))
                .without(check -> finding(check.id()).isPresent());
    }

    Optional<Check> next() {
        List<String> skipped = notes().skipped();
        List<Check> open = route().all();
        return open.stream()
                .filter(each -> !skipped.contains(each.id()))
                .findFirst()
                .or(() -> open.stream().findFirst());
    }

    void skip(String check) {
        notes = services.book().move(boat, now -> {
            List<String> skipped = new ArrayList<>(now.skipped());
            skipped.remove(check);
            skipped.add(check);
            return now.onTheWay(now.order(), now.at(), skipped);
        });
    }

    /** Saves a change of the boat's data at once. */
    Saved<Candidate> save(UnaryOperator<CandidateData> change) {
        Candidate seen = candidate();
        Saved<Candidate> saved = services.editing()
                .save(
                        new Candidate(seen.id(), seen.shortlist(), seen.version(), change.apply(seen.data())),
                        Visitor.name());
        switch (saved) {
            case Saved.Done<Candidate>(Candidate now) -> adopt(facts.with(now));
            case Saved.Merged<Candidate> merged -> reload(seen.shortlist());
            case Saved.Clashed<Candidate> clashed -> reload(seen.shortlist());
            case Saved.Gone<Candidate> gone -> {}
        }
        return saved;
    }

    private void reload(ShortlistId list) {
        services.editing().facts(list).ifPresent(this::adopt);
    }
}
