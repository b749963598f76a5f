package org.keelweigh.ui.photo;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.PhotoId;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Serves photos under addresses that cannot be guessed. They were made anew on the way in and can hold no script. */
@RestController
class PhotoFiles {

    private static final Duration KEPT = Duration.ofDays(30);

    private final PhotoAlbum album;

    PhotoFiles(PhotoAlbum album) {
        this.album = album;
    }

    /** Tells the address of a photo. */
    static String address(PhotoId id) {
        return "photos/" + id + ".jpg";
    }

    /** Tells the address of a photo's thumbnail. */
    static String smallAddress(PhotoId id) {
        return "photos/small/" + id + ".jpg";
    }

    @GetMapping("/photos/{id}.jpg")
    ResponseEntity<byte[]> picture(@PathVariable String id) {
        return answer(id(id).flatMap(album::picture));
    }

    @GetMapping("/photos/small/{id}.jpg")
    ResponseEntity<byte[]> thumbnail(@PathVariable String id) {
        return answer(id(id).flatMap(album::thumbnail));
    }

    private static ResponseEntity<byte[]> answer(Optional<byte[]> bytes) {
        return bytes.map(found -> ResponseEntity.ok()
                        .contentType(MediaType.parseMediaType(PictureReading.Accepted.MEDIA_TYPE))
                        .cacheControl(CacheControl.maxAge(KEPT).cachePrivate().immutable())
                        .header("X-Content-Type-Options", "nosniff")
                        .header("Content-Security-Policy", "default-src 'none'; sandbox")
                        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"photo.jpg\"")
                        .body(found))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static Optional<PhotoId> id(String text) {
        try {
            return Optional.of(new PhotoId(UUID.fromString(text)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
