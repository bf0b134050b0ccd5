package trimwright.desktop;

/** What the help says. */
final class HelpText {

    static final String KEYS = """
            F1 … F6   the jobs, from Load to Pool test
            1 2 3 4   side, plan, end and free view        F   fit the boat into the view
            H   hull as glass, solid or wire
            Ctrl + arrows   turn the view                  + and -   nearer and farther

            Drag   turn the view          Shift or right button + drag   move the view
            Wheel   nearer and farther at the pointer      double click   fit
            Click   pick a part           drag a picked part   move it along one axis, 1 mm a step (Alt: 0.1 mm)
            Violet grips (Afloat)   drag to lift and tilt a waterline to try; the sliders do the same
            Curves   click, or arrows when they have the focus: she is shown at that point

            Arrows   nudge the picked part fore, aft, up and down; with Shift to port and starboard (up, down)
            Ctrl+D   copy the picked part                  Delete   take it out
            Ctrl+Z, Ctrl+Shift+Z   undo, redo              Escape   pick nothing; back to her as loaded
            Ctrl+N   new from a mesh               Ctrl+O, Ctrl+S, Ctrl+Shift+S   open, save, save as
            Ctrl+P   save a picture of the pool            Ctrl+Q   quit
            Tab, Shift+Tab   from field to field           Enter   a typed number counts, Escape takes it back
            F10   the menus                                F11   this list
            Ctrl+L   dark or light                         Ctrl+I   inches and ounces or mm and g
            """;

    static final String WORDS = """
            B, centre of buoyancy: the middle of the water she displaces.
            G, centre of gravity: the middle of her weight.
            M, metacentre: the point about which she rolls when afloat. GM is how far M stands above G: she stands up only if it is \
            above 0.
            BG: how far B stands above G. Dived only this rights her.
            List is to the side, trim fore and aft.
            Reserve: what she could still carry before all of her is under.
            Buoyancy left, dived: what brings her up when the signal is lost. Below 0 she goes down for good.
            """;

    static final String CAUTIONS = """
            For models only, not for craft that carry people.

            Prove every computed waterline in shallow water, with a line on the boat, before you let her go.

            Lithium batteries burn when wet, crushed or badly charged. Charge them outside the boat, watched, on something that does \
            not burn, and keep to the maker's instructions.

            Lead is poisonous, above all molten or as dust. Wash your hands, keep it from children, and leave casting to those who \
            know how.

            A cylinder, tank or gas bottle under pressure can burst. Use only what is rated for it.

            Open water: never swim after a boat. Mind others, wildlife and local rules.

            Where local rules or licensed practice say more or otherwise, they hold.
            """;

    private HelpText() {}
}
