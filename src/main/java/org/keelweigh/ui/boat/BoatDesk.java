package org.keelweigh.ui.boat;

import com.vaadin.flow.component.UI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.VisitRoute;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.report.FieldSheet;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ChangeLog;
import org.keelweigh.shortlist.ClashWords;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Doubt;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.Plausibility;
import org.keelweigh.shortlist.Saved;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.VisitOrder;
import org.keelweigh.ui.shell.Background;
import org.keelweigh.ui.shell.Latest;
import org.keelweigh.ui.shell.SaveNews;
import org.keelweigh.ui.shell.Visitor;
import org.springframework.stereotype.Component;

/**
 * What all sections of a boat's page work with: the boat as it was last seen here, what was found out about it, and the one
 * way to edit it.
 */
final class BoatDesk {

    private final Services services;
    private final ShortlistEditing editing;
    private final AppraisalService appraisal;
    private final CandidateId boat;
    private final Notices notices = new Notices();
    private final Latest<Measured> measuring;
    private boolean working;
    private Runnable onSaved = () -> {};
    private Runnable onChange = () -> {};
    private Facts facts;
    private Measured measured;

    /** Everything the page works with. */
    @Component
    record Services(
            ShortlistEditing editing,
            AppraisalService appraisal,
            Background background,
            PhotoAlbum album,
            Clock clock) {}

    BoatDesk(Services services, Facts facts, CandidateId boat) {
        this.services = services;
        this.editing = services.editing();
        this.appraisal = services.appraisal();
        this.measuring = new Latest<>(services.background(), "what an edit changes");
        this.boat = boat;
        this.facts = facts;
        this.measured = appraisal.measure(facts);
    }

    /** Has every saved edit followed by {@code saved} at once, and by {@code changed} when its effect is worked out. */
    void onChange(Runnable saved, Runnable changed) {
        onSaved = saved;
        onChange = changed;
    }

    ShortlistEditing editing() {
        return editing;
    }

    PhotoAlbum album() {
        return services.album();
    }

    /** Writes the field sheet of this boat, in the order of a walk round it. */
    byte[] fieldSheet() {
        BoatReport report = report();
        List<Check> checks = VisitRoute.of(report.condition(), Double.POSITIVE_INFINITY, VisitOrder.WALK, List.of())
                .all(catalogues().inspection().applicable(report.boat()));
        FieldSheet.Stop stop = new FieldSheet.Stop(candidate(), report.boat(), checks);
        return FieldSheet.of(
                        data().name(),
                        List.of(stop),
                        catalogues().inspection(),
                        services.clock().instant())
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Tells whether what a saved edit changes is still being worked out. */
    boolean working() {
        return working;
    }

    Notices notices() {
        return notices;
    }

    Facts facts() {
        return facts;
    }

    Measured measured() {
        return measured;
    }

    Candidate candidate() {
        return facts.candidate(boat).orElseThrow();
    }

    CandidateData data() {
        return candidate().data();
    }

    Optional<Finding> finding(String check) {
        return data().findings().stream()
                .filter(each -> each.check().equals(check))
                .findFirst();
    }

    BoatReport report() {
        return measured.boats().get(place());
    }

    /** Tells the boat's place in the order in which the shortlist keeps its boats, as they were last measured. */
    int place() {
        for (int i = 0; i < measured.boats().size(); i++) {
            if (measured.boats().get(i).id().equals(boat)) {
                return i;
            }
        }
        throw new NoSuchElementException("The boat is not on this shortlist");
    }

    Display display() {
        return measured.situation().display();
    }

    Catalogues catalogues() {
        return appraisal.catalogues();
    }

    /** Says what may be wrong with what stands in a field, though it was kept. */
    Optional<String> doubt(String field) {
        return doubts(data(), field).map(Doubt::sentence);
    }

    /** Puts a value into a field; {@code null} makes it unknown. Answers with the reason when it is refused. */
    Optional<String> set(String field, @Nullable Object value) {
        return edit(field, data -> new FieldPath(field).with(data, value));
    }

    /**
     * Makes an edit that no bound can refuse and saves it. Shows it at once; what follows from it is worked out meanwhile,
     * and a newer edit overtakes.
     */
    void record(UI ui, String field, UnaryOperator<CandidateData> change) {
        SaveNews.tell(save(change.apply(data())), words(), () -> again(field, change));
        stored().ifPresent(now -> {
            facts = now;
            working = true;
            onSaved.run();
            measuring.ask(ui, () -> appraisal.measure(now), found -> {
                measured = found;
                working = false;
                onChange.run();
            });
        });
    }

    /** Makes an edit and saves it. Answers with the reason when it is refused; nothing is saved then. */
    Optional<String> edit(String field, UnaryOperator<CandidateData> change) {
        CandidateData edited = change.apply(data());
        Optional<String> refused = doubts(edited, field).filter(Doubt::refused).map(Doubt::sentence);
        if (refused.isEmpty()) {
            SaveNews.tell(save(edited), words(), () -> again(field, change));
            reload();
        }
        return refused;
    }

    /** Makes an earlier state the present one. */
    void returnTo(long version) {
        editing.returnTo(boat, version, Visitor.name());
        reload();
    }

    /** Reads and measures everything anew, and lets the page show it. */
    void reload() {
        stored().ifPresent(this::adopt);
    }

    private Optional<Facts> stored() {
        return editing.facts(facts.shortlist().id())
                .filter(now -> now.candidate(boat).isPresent());
    }

    /** Hears that somebody changed facts; what stands in the fields stays until the person asks for the news. */
    void hear(Facts now, String by) {
        Optional<Candidate> theirs = now.candidate(boat);
        if (now.equals(facts)) {
            return;
        }
        if (theirs.isEmpty()) {
            notices.offer(by + " took this boat off the shortlist.", "Put it back", () -> {
                editing.restore(boat, Visitor.name());
                reload();
            });
        } else if (theirs.get().version() == candidate().version()) {
            adopt(now);
        } else {
            String what =
                    String.join(" ", changeLog().between(data(), theirs.get().data()));
            notices.offer(by + " changed this boat meanwhile. " + what, "Show it here", this::reload);
        }
    }

    ChangeLog changeLog() {
        return new ChangeLog(display(), new Wording(this)::of);
    }

    private ClashWords words() {
        return new ClashWords(display(), new Wording(this)::of);
    }

    /** Makes an edit once more over what stands now, bringing the boat back if it was taken off the list. */
    private void again(String field, UnaryOperator<CandidateData> change) {
        if (stored().isEmpty()) {
            editing.restore(boat, Visitor.name());
            reload();
        }
        edit(field, change);
    }

    private void adopt(Facts now) {
        measuring.drop();
        working = false;
        facts = now;
        measured = appraisal.measure(now);
        onChange.run();
    }

    private Optional<Doubt> doubts(CandidateData data, String field) {
        return new Plausibility(catalogues().defaults(), measured.situation().thisYear(), display())
                .of(data).stream().filter(each -> each.field().equals(field)).findFirst();
    }

    private Saved<Candidate> save(CandidateData edited) {
        Candidate seen = candidate();
        return editing.save(new Candidate(boat, seen.shortlist(), seen.version(), edited), Visitor.name());
    }
}
