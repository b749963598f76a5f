package org.keelweigh.ui.photo;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.keelweigh.picture.PictureIntake;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.ui.shell.BoundedUpload;
import org.keelweigh.ui.shell.Visitor;

/**
 * Takes photos from the camera or from files. The place they were taken is left behind; a file that is no picture is answered
 * in a sentence.
 */
public final class PhotoUpload extends Div {

    /** Vaadin's own limit is a little wider, so that the sentence comes from here. */
    private static final int MOST_BYTES_SENT = PictureIntake.MOST_BYTES + 1024 * 1024;

    private static final String NOT_SENT = "This file was not taken: only JPEG, PNG and WebP pictures up to 15 MB are.";

    private final Paragraph answer = new Paragraph();
    private final transient Supplier<String> who;
    private final transient Keeping keep;

    /** Keeps a picture that was taken in; answers with what to tell the person. */
    @FunctionalInterface
    interface Keeping {

        /** Keeps the picture in the name of {@code who}. */
        String keep(PictureReading.Accepted picture, String who);
    }

    /**
     * Makes the buttons.
     *
     * @param who tells whose photos these are
     * @param keep keeps each picture
     */
    PhotoUpload(Supplier<String> who, Keeping keep) {
        this.who = who;
        this.keep = keep;
        addClassName("kw-photo-upload");
        answer.addClassName("kw-soft");
        answer.getElement().setAttribute("role", "status");
        Upload camera = upload("Take a photo", "photo-camera");
        // Phones open the camera at once; the property belongs to the file field inside.
        camera.getElement().setProperty("capture", "environment");
        Div buttons = new Div(camera, upload("Choose photos", "photo-files"));
        buttons.addClassName("kw-row");
        add(buttons, answer);
    }

    /**
     * Makes the buttons for photos of a boat or, if one is named, of a check on it.
     *
     * @param check the check's id
     */
    public static PhotoUpload into(PhotoAlbum album, CandidateId boat, @Nullable String check) {
        return new PhotoUpload(Visitor::name, (picture, who) -> album.add(boat, check, picture, who)
                .map(photo -> "The photo is saved.")
                .orElse("This boat has as many photos as are kept. Delete one first."));
    }

    private Upload upload(String label, String id) {
        Upload upload = new Upload();
        upload.setUploadHandler(new BoundedUpload<>(PictureIntake.MOST_BYTES, PictureIntake::read, this::take));
        upload.setUploadButton(new Button(label));
        upload.setDropAllowed(false);
        upload.setMaxFileSize(MOST_BYTES_SENT);
        upload.getElement().setProperty("accept", "image/jpeg,image/png,image/webp");
        upload.addFileRejectedListener(event -> say(NOT_SENT));
        upload.addAllFinishedListener(event -> upload.clearFileList());
        upload.setTestId(id);
        return upload;
    }

    /** Keeps what was read of a file, or says why not. */
    void take(PictureReading reading) {
        say(
                switch (reading) {
                    case PictureReading.Accepted accepted -> keep.keep(accepted, who.get());
                    case PictureReading.Refused refused -> refused.sentence();
                });
    }

    /** Tells what the person was told last. */
    String answer() {
        return answer.getText();
    }

    private void say(String sentence) {
        answer.setText(sentence);
    }
}
