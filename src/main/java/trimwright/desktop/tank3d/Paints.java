package trimwright.desktop.tank3d;

import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import trimwright.boat.Kind;

/** Colours of the pool. Kinds differ in lightness as well as in hue, for those who do not see red and green. */
final class Paints {

    static final Color WATERLINE = Color.web("#0a6fd6");
    static final Color PAINTED_LINE = Color.web("#d9480f");
    static final Color TRIED_LINE = Color.web("#6741d9");
    static final Color MISFIT = Color.web("#c2001f");
    static final Color TANK_WATER = Color.web("#1864ab");
    static final Color GRAVITY = Color.web("#d6336c");
    static final Color BUOYANCY = Color.web("#1971c2");
    static final Color METACENTRE = Color.web("#e8a200");
    static final Color PICKED = Color.web("#ff922b");
    static final Color PLANNED = Color.web("#8ce99a");

    private Paints() {}

    static Color of(Kind kind) {
        return switch (kind) {
            case HULL -> Color.web("#93a1ad");
            case CYLINDER -> Color.web("#b9d3e6");
            case TANK -> Color.web("#5fb4d8");
            case BALLAST -> Color.web("#4b4e58");
            case FOAM -> Color.web("#f2c94c");
            case AIR -> Color.web("#dfe9f2");
            case FITTING -> Color.web("#a07855");
        };
    }

    /** A lit surface; one with less than full opacity lets through what was drawn before it. */
    static PhongMaterial lit(Color colour, double opacity) {
        PhongMaterial material = new PhongMaterial(premultiplied(colour, opacity));
        material.setSpecularColor(Color.gray(0.18 * opacity));
        material.setSpecularPower(24);
        return material;
    }

    /** The toolkit mixes a diffuse colour as if it were multiplied with its opacity already. */
    static Color premultiplied(Color colour, double opacity) {
        return new Color(colour.getRed() * opacity, colour.getGreen() * opacity, colour.getBlue() * opacity, opacity);
    }

    /** A surface that looks the same in any light. */
    static PhongMaterial glowing(Color colour) {
        WritableImage image = new WritableImage(2, 2);
        PixelWriter pixels = image.getPixelWriter();
        for (int i = 0; i < 4; i++) {
            pixels.setColor(i % 2, i / 2, colour);
        }
        PhongMaterial material = new PhongMaterial(Color.BLACK);
        material.setSelfIlluminationMap(image);
        return material;
    }
}
