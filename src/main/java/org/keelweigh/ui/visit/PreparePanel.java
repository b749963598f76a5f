package org.keelweigh.ui.visit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.progressbar.ProgressBar;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.keelweigh.appraisal.VisitGuide;
import org.keelweigh.appraisal.VisitRoute;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.SellerQuestion;
import org.keelweigh.shortlist.VisitOrder;

/** Before the walk: the time one has, the order, what to bring and what to ask. */
final class PreparePanel extends Div implements VisitPanel {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd 'at' HH:mm");

    private final transient VisitDesk desk;
    private final Paragraph plan = new Paragraph();
    private final Paragraph reason = new Paragraph();
    private final ProgressBar working = new ProgressBar();
    private final UnorderedList bring = new UnorderedList();
    private final Select<VisitOrder> order = new Select<>();
    private final transient NoteFields notes;

    PreparePanel(VisitDesk desk, Runnable begin) {
        this.desk = desk;
        this.notes = new NoteFields(desk);
        addClassName("kw-stack");
        add(meeting(), time(begin), bringing(), asking(), new SheetLinks(desk));
        refresh();
    }

    @Override
    public void refresh() {
        VisitRoute route = desk.route();
        int made = desk.checks().size() - route.all().size();
        double minutes = route.planned().stream().mapToDouble(Check::minutes).sum();
        plan.setText(route.planned().size() + " checks fit into your time (" + Math.round(minutes) + " minutes), "
                + route.later().size() + " more are there if you have longer"
                + (made == 0 ? "." : "; " + made + " are made already."));
        working.setVisible(desk.awaitsAdvice());
        reason.setVisible(desk.order() == VisitOrder.CHOICE);
        reason.setText(reason(route));
        order.setValue(desk.order());
        notes.refresh();
        bring.removeAll();
        VisitGuide.tools(route.planned()).forEach(tool -> bring.add(new ListItem(tool)));
    }

    private String reason(VisitRoute route) {
        if (desk.awaitsAdvice()) {
            return "Working out what could change the choice. Until then the checks worth most per minute come first.";
        }
        return route.all().stream()
                .findFirst()
                .flatMap(first -> desk.outlook(first)
                        .map(outlook -> "First: " + first.title() + ". It " + outlook.reason() + "."))
                .orElse("No check left on this boat could change the choice; those worth most per minute come first.");
    }

    private Section meeting() {
        Section meeting = sheet(
                "Where, and who is there",
                notes.line("place", "Place of the visit"),
                notes.line("present", "Who is there"));
        Optional.ofNullable(desk.notes().startedAt()).ifPresent(start -> {
            Paragraph begun =
                    new Paragraph("The walk began on " + MINUTE.format(start.atZone(ZoneId.systemDefault())) + ".");
            begun.setTestId("begun");
            meeting.add(begun);
        });
        return meeting;
    }

    private Section time(Runnable begin) {
        IntegerField minutes = notes.minutes("Minutes you give yourself");
        minutes.addValueChangeListener(change -> refresh());
        order.setLabel("Order of the checks");
        order.setItems(VisitOrder.values());
        order.setItemLabelGenerator(VisitOrder::label);
        order.setValue(desk.order());
        order.addValueChangeListener(change -> {
            if (change.isFromClient() && change.getValue() != null) {
                desk.order(change.getValue());
                refresh();
            }
        });
        order.setWidthFull();
        order.setTestId("order");
        reason.addClassName("kw-soft");
        reason.setTestId("order-reason");
        reason.getElement().setAttribute("role", "status");
        working.setIndeterminate(true);
        working.getElement().setAttribute("aria-label", "Working out the order of the checks");
        boolean started = desk.notes().startedAt() != null;
        Button button = new Button(started ? "Begin anew: the clock starts again" : "Begin the walk", click -> {
            desk.begin();
            begin.run();
        });
        button.addThemeVariants(ButtonVariant.PRIMARY);
        button.setTestId("begin");
        return sheet("Your time", minutes, order, working, reason, plan, button);
    }

    private Section bringing() {
        bring.addClassName("kw-tools");
        return sheet(
                "What to bring",
                bring,
                new Paragraph(
                        "And: another adult, straps, a bill of sale to fill in, daylight. Leave the full sum at home."));
    }

    private Section asking() {
        List<SellerQuestion> questions = desk.guide().questions(desk.report().boat());
        Div all = new Div();
        questions.forEach(question -> all.add(question(question)));
        return sheet(
                "Questions to the seller",
                new Paragraph("Ask before you touch anything; note the words."),
                new NativeDetails(questions.size() + " questions, with what to listen for", all));
    }

    private Div question(SellerQuestion question) {
        TextArea answer = notes.lines("answers." + question.id(), question.text());
        answer.setHelperText("Listen for: " + question.listenFor());
        answer.setTestId("question-" + question.id());
        return new Div(answer);
    }

    static Section sheet(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.add(content);
        section.addClassName("kw-sheet");
        return section;
    }
}
