package org.keelweigh.ui.trip;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.select.Select;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.shortlist.LaunchSite;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.shell.Undo;

/** The stretches of the way from the car to the water. */
final class LaunchSection extends Sheet {

    private final transient Desk desk;
    private final transient Runnable anew;

    LaunchSection(Desk desk, Fields fields, Runnable anew) {
        super(
                "From the car to the water",
                "Split the way where its surface or its slope changes. The worst stretch decides how hard the pull is.");
        this.desk = desk;
        this.anew = anew;
        List<LaunchSite> sites = desk.data().trip().launches();
        if (sites.isEmpty()) {
            desk.assumed("trip.launches").ifPresent(each -> {
                var assumed = soft("Assumed: " + each);
                assumed.addClassName("kw-assumed");
                add(assumed);
            });
        }
        for (int place = 0; place < sites.size(); place++) {
            add(stretch(fields, place));
        }
        Button add = new Button("Add a stretch", click -> addStretch());
        add.setTestId("add-stretch");
        add(new Div(add));
        add(caution(
                "A loaded cart on a slope can run away. Keep people out of its path, and haul with two where the pull is more than "
                        + "one person holds with ease."));
    }

    private Div stretch(Fields fields, int place) {
        String path = "trip.launches[" + place + "].";
        Button remove = new Button("Remove this stretch", click -> remove(place));
        remove.setTestId("remove-stretch-" + place);
        Div stretch = new Div(
                new H3("Stretch " + (place + 1)),
                row(
                        fields.name(path + "name", "What you call it"),
                        surface(fields, path),
                        fields.quantity(path + "distanceM", "Distance", Quantity.WAY, Bound.DISTANCE),
                        fields.quantity(
                                path + "gradePercent",
                                "Slope, %",
                                Quantity.NUMBER,
                                Bound.GRADE,
                                "Rise on 100 going back up; 8 is a usual ramp limit, 15 is steep"),
                        fields.whole(path + "steps", "Steps or stairs", Bound.STEPS),
                        fields.quantity(
                                path + "stepHeightM", "Tallest step or kerb", Quantity.BREADTH, Bound.STEP_HEIGHT)),
                remove);
        stretch.addClassName("kw-trip-part");
        return stretch;
    }

    private Select<String> surface(Fields fields, String path) {
        Map<String, String> names = new LinkedHashMap<>();
        desk.appraisal().catalogues().haul().surfaces().forEach(each -> names.put(each.code(), each.label()));
        return fields.choice(path + "surface", "Surface", names);
    }

    private void addStretch() {
        List<LaunchSite> sites = new ArrayList<>(desk.data().trip().launches());
        sites.add(new LaunchSite("Stretch " + (sites.size() + 1), null, null, null, null, null));
        desk.launches(sites);
        anew.run();
    }

    private void remove(int place) {
        List<LaunchSite> sites = new ArrayList<>(desk.data().trip().launches());
        LaunchSite removed = sites.remove(place);
        desk.launches(sites);
        anew.run();
        Undo.offer("Removed " + removed.name() + ".", () -> {
            List<LaunchSite> now = new ArrayList<>(desk.data().trip().launches());
            now.add(Math.min(place, now.size()), removed);
            desk.launches(now);
            anew.run();
        });
    }
}
