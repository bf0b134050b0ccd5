package trimwright.samples;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A surface through half sections of the port side, each from the keel up and over to the middle of the deck, with as many
 * points each; the starboard side is its mirror image.
 *
 * @param sections station by station from the stern to the bow
 */
record Loft(Vector3D[][] sections) {

    /** Which cells of the port side to leave open. */
    @FunctionalInterface
    interface Gap {
        boolean at(int station, int point);
    }

    static final Gap NONE = (station, point) -> false;

    int stations() {
        return sections.length;
    }

    int points() {
        return sections[0].length;
    }

    /** Both sides of the surface, outward. */
    void addOutward(Patchwork patchwork, Gap gap) {
        for (int i = 0; i + 1 < stations(); i++) {
            for (int j = 0; j + 1 < points(); j++) {
                if (!gap.at(i, j)) {
                    Vector3D[] aft = sections[i];
                    Vector3D[] fore = sections[i + 1];
                    patchwork.bothSides(aft[j], aft[j + 1], fore[j + 1], fore[j]);
                }
            }
        }
    }

    /**
     * The loop of points round a gap in the deck between two stations and from a point to the middle line, counter-clockwise
     * seen from above, from the middle of its fore end.
     */
    Vector3D[] deckLoop(int aft, int fore, int edge) {
        int middle = points() - 1;
        int across = middle - edge;
        int along = fore - aft;
        Vector3D[] loop = new Vector3D[2 * along + 4 * across];
        int m = 0;
        for (int j = middle; j > edge; j--) {
            loop[m++] = sections[fore][j];
        }
        for (int i = fore; i > aft; i--) {
            loop[m++] = sections[i][edge];
        }
        for (int j = edge; j <= middle; j++) {
            loop[m++] = sections[aft][j];
        }
        while (m < loop.length) {
            loop[m] = Patchwork.mirrored(loop[loop.length - m]);
            m++;
        }
        return loop;
    }
}
