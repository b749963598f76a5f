package org.keelweigh.ui.trip;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.Person;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.UnitSystem;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/** Those who paddle, carry or decide. */
final class PeopleSection extends Sheet {

    private final transient Desk desk;
    private final transient Runnable anew;
    private final transient List<Fields> fields = new ArrayList<>();

    PeopleSection(Desk desk, Runnable anew) {
        super("People", "Everybody who paddles, helps to carry or decides. A boat is measured for each of them apart.");
        this.desk = desk;
        this.anew = anew;
        if (desk.facts().people().isEmpty()) {
            desk.assumed("people").ifPresent(each -> {
                Paragraph assumed = soft("Assumed: " + each);
                assumed.addClassName("kw-assumed");
                add(assumed);
            });
        }
        desk.facts().people().forEach(each -> add(person(each)));
        Button add = new Button("Add a person", click -> addPerson());
        add.setTestId("add-person");
        add(new Div(add));
    }

    /** Tells the fields of all people. */
    List<Fields> fields() {
        return List.copyOf(fields);
    }

    private Div person(Person person) {
        Fields mine = Fields.ofPerson(desk, person.id());
        fields.add(mine);
        Button remove = new Button("Remove " + person.data().name(), click -> remove(person));
        remove.setTestId("remove-person");
        Div card = new Div(
                new H3(person.data().name()),
                row(
                        mine.name("name", "Name"),
                        mine.choice("use", "How they use the boat", PaddlingUse.class, PaddlingUse::label),
                        mine.quantity("massKg", "Body mass", Quantity.MASS, Bound.PERSON_MASS, "Dressed for the water"),
                        mine.quantity("heightM", "Height", Quantity.LENGTH, Bound.PERSON_HEIGHT),
                        mine.quantity(
                                "hipWidthM",
                                "Width across the hips",
                                Quantity.BREADTH,
                                Bound.HIP_WIDTH,
                                "Seated; decides whether a seat fits")),
                row(mine.flag("paddles", "Will be aboard"), mine.flag("decides", "Has a say in the decision")),
                limits(mine),
                remove);
        card.addClassName("kw-trip-part");
        return card;
    }

    private NativeDetails limits(Fields mine) {
        Display display = desk.display();
        OrderedList how = new OrderedList(
                new ListItem("Take a container with a handle, such as a water can; one litre weighs " + display.mass(1)
                        + "."),
                new ListItem(
                        "Stand in front of a shelf as high as the roof bars, and lift it there with little water in it."),
                new ListItem(
                        "Add a litre or two at a time. Stop at the first strain, and take the last mass that was easy."));
        Div body = new Div(
                row(
                        mine.quantity(
                                "liftLimitKg",
                                "Tested lift to roof height",
                                Quantity.MASS,
                                Bound.LIFT_LIMIT,
                                "It wins over the guide value when it is lower"),
                        mine.quantity(
                                "haulLimitN",
                                "Pull without strain",
                                Quantity.FORCE,
                                Bound.HAUL_LIMIT,
                                display.units() == UnitSystem.US
                                        ? "By a luggage scale on a rope, in pounds"
                                        : "By a luggage scale on a rope; 10 kg on the scale are 98 N")),
                new Paragraph("How to test a lift:"),
                how,
                caution(
                        "Do not test with an injured back, alone, or over your head with hard things. When in doubt leave it empty: a guide "
                                + "value for the lift stands in. If it hurts, stop."));
        NativeDetails details = new NativeDetails("What they can lift and pull", body);
        details.addClassName("kw-trip-limits");
        return details;
    }

    private void addPerson() {
        int number = desk.facts().people().size() + 1;
        desk.editing().add(desk.facts().shortlist().id(), PersonData.named("Person " + number), Visitor.name());
        anew.run();
    }

    private void remove(Person person) {
        desk.editing().delete(person.id(), Visitor.name());
        anew.run();
        Undo.offer("Removed " + person.data().name() + ".", () -> {
            desk.editing().restore(person.id(), Visitor.name());
            anew.run();
        });
    }
}
