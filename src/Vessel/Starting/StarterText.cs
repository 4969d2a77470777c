using System.Text;

namespace Vessel.Starting;

/// <summary>The starter as a file, each key with what it does and why it has its value.</summary>
internal static class StarterText
{
    private const int CommentColumn = 34;

    public static string Of(StarterSizes sizes)
    {
        var text = new StringBuilder();
        text.Append(Head(sizes)).Append(Ports(sizes));
        if (sizes.Inside != StarterInside.Nothing)
            text.Append(Inside(sizes));
        text.Append(sizes.Wish.HasBracket ? Bracket(sizes) : Strap(sizes));
        text.Append(FormattableString.Invariant($"""

            flow:
              blow_by: {sizes.Wish.BlowBy:0.#} L/min # {sizes.Wish.BlowByFrom}
              liquid: engine oil # 'stock liquids' lists others, by grade
              temperature: 80 degC # of gas and liquid

            """));
        return string.Join('\n', text.ToString().ReplaceLineEndings("\n").Split('\n').Select(Aligned));
    }

    /// <summary>Comments after values stand below each other.</summary>
    private static string Aligned(string line) => line.IndexOf(" # ", StringComparison.Ordinal) is > 0 and var at
        ? $"{line[..at].TrimEnd(),-CommentColumn} {line[at..].TrimStart()}"
        : line;

    private static string Head(StarterSizes s) => FormattableString.Invariant($$"""
        # A first design to change: 'check' says what it leads to, 'build' writes the files.
        vessel: "{{Quoted(s.Wish.Purpose)}}"
        revision: A
        units: mm # of bare numbers; '1 1/4 in', '16 ga' or '0.5 in' work anywhere
        material: {{s.Wish.Material.Name}} # of every part that names no other; 'stock materials' lists them

        dimensions: # names for sizes, for use in any value below
          body: {{s.Body}} # the gas rises through it at {{s.Rise:0.00}} m/s; your room is {{s.Wish.RoomDiameter:0}} mm
          hose: {{s.Hose}} # {{(s.Wish.Hose is null ? "lets the gas through at no more than 3 m/s" : "as you asked")}}
          sheet: {{s.Wall}} # what can be welded by hand without burning through

        shell:
          outside_diameter: body
          wall: sheet
          height: {{s.Height}} # the lowest that holds {{s.Wish.Capacity:0.##}} L between drains ({{s.Wish.CapacityFrom}}) and passes the checks, in steps of 10 mm
          made_from: sheet # rolled, with a long seam; 'tube' where you have one of this size
          seam_angle: 200 # where no port stands; 0 is the front, counter-clockwise from above

        top: # a lid let into the shell, flush with its end
          shape: flat
          thickness: {{s.Lid}}
          seat: inset
          recess: 0
          clearance: 0.2

        bottom:
        {{Bottom(s)}}

        """);

    private static string Bottom(StarterSizes s) => s.IsDomed
        ? """
              shape: hemisphere # the oil runs to its lowest point, so that all of it can be drained
              wall: sheet
              made_from: spinning # bought as a spinning; 'gores' to make it of sheet
            """
        : FormattableString.Invariant($"""
              shape: flat # a dome does not fit the height of your room
              thickness: {s.Lid}
              seat: inset
            """);

    private static string Ports(StarterSizes s) => FormattableString.Invariant($$"""

        ports:
          - name: inlet
            purpose: gas_in
            in: shell
            at: { height: {{s.Inlet}}, angle: 0, offset: {{s.Offset}} } # {{(s.Offset > 0 ? "off centre, so that the gas enters along the wall" : "in the middle")}}
            tube: { outside_diameter: hose, wall: 2 }
            length: {{50 + (s.Offset > 0 ? 10 : 0)}} # enough for a hose and its clamp
            joint: set_on
            cut: ground # to fit; 'square' is quicker and leaves a gap, see the weld table

          - name: outlet
            purpose: gas_out
            in: top
            at: { radius: 0 }
            tube: { outside_diameter: hose, wall: 2 }
            length: {{StarterSizes.StubAbove}}
            inside_length: 12 # below the lid, so that oil on it drips off instead of creeping out
            joint: set_in

          - name: drain
            purpose: drain # shut in use; what flows, fills, overflows or shows the level has a purpose of its own
            in: bottom
            at: { radius: 0 }
            bung: { thread: {{s.Drain.Thread}}, outside_diameter: {{s.Drain.Diameter}}, length: {{s.Drain.Length}} }
            inside_length: {{s.DrainInside}} # its end comes through all round

        """);

    private static string Inside(StarterSizes s)
    {
        var sleeve = FormattableString.Invariant($$"""

            inside:
              sleeve: # the gas has to go down and turn round its rim; drops do not follow
                tube: { outside_diameter: {{s.Sleeve}}, wall: 2 }
                length: {{StarterSizes.SleeveLength}} # farther down than the inlet
                hangs_from: top
                fixed: weld

            """);
        if (s.Inside == StarterInside.Sleeve)
            return sleeve;
        var rim = s.Height - s.Lid - StarterSizes.SleeveLength;
        return sleeve + FormattableString.Invariant($$"""

              cap: # a cup under the outlet: no straight way in, and what drips runs back
                outside_diameter: {{s.Cap}}
                wall: 2
                skirt: 38
                opens: up
                hangs_from: top
                fixed: weld
                drain_hole: 5
                windows: { count: 4, width: {{Math.Floor(s.Cap * 0.28)}}, height: 16, corner: 3, up: 16 }

              discs: # hold the packing, which stops coarse drops and splash; most of the fine mist passes it, as the report says
                - { name: lower screen, fits: sleeve, at: { height: {{rim + 7}} }, thickness: 1.5, clearance: 0.2, fixed: tabs,
                    hole_diameter: 3, pitch: 4.5, pattern: staggered_60, margin: 3 }
                - { name: upper screen, fits: sleeve, at: { height: {{rim + 31}} }, thickness: 1.5, clearance: 0.2, fixed: tabs,
                    hole_diameter: 3, pitch: 4.5, pattern: staggered_60, margin: 3 }

              packing: { material: {{Wool(s)}}, between: [lower screen, upper screen], density: 70 kg/m3, fibre_diameter: 0.05 }

            """);
    }

    private static string Wool(StarterSizes s) => s.Wish.Material.Family switch
    {
        Stock.MaterialFamily.Aluminium => "aluminium wool",
        Stock.MaterialFamily.Stainless => "stainless wool",
        _ => "steel wool",
    };

    private static string Bracket(StarterSizes s)
    {
        // Washers of 16 mm and the bends of the ears need their room on the plate.
        var (width, height) = (Math.Max(60, Math.Floor(s.Body * 0.7)), Math.Clamp(Math.Floor(s.Height * 0.5), 70, 120));
        return FormattableString.Invariant($$"""

            bracket:
              at: { height: {{Math.Floor(s.Height * 0.45)}}, angle: 90 } # its middle; a quarter turn from the inlet
              thickness: 3
              width: {{width}}
              height: {{height}}
              stand_off: 28 # room for a spanner behind the plate
              ears: ends # cut to the shell's curve, above and below
              inside_radius: 8
              bolts: { diameter: 8, across: {{width - 30}}, up: {{height - 50}}, slot: 5 }

            mounting:
              duty: vehicle # where it is mounted: fixed, vehicle, boat or carried; or give an acceleration in g

            """);
    }

    /// <summary>Strap on the longer free stretch of the shell, below the inlet or above it.</summary>
    private static string Strap(StarterSizes s)
    {
        // A weld and its legs beside the inlet, and at the shell's ends.
        const double clear = 10;
        var (below, above) = (s.Inlet - (s.Hose / 2), s.Inlet + (s.Hose / 2));
        var (low, high) = below > s.Height - above ? (0, below) : (above, s.Height);
        var width = Math.Clamp(Math.Floor(high - low - (2 * clear)), 20, 40);
        return FormattableString.Invariant($$"""

            strap: # two half bands, drawn together round the shell; nothing is welded to it
              at: { height: {{Math.Round((low + high) / 2)}}, angle: 110 } # the back half; the long seam lies in a gap between the halves
              thickness: 3
              width: {{width}}
              liner: 3 # rubber between shell and band
              gap: 6 # left to draw up
              ear: 34
              bolts: { diameter: 8, slot: 4 }
              feet: { length: 40, stand_off: 25, bolts: { diameter: 8 } } # stand_off: room for a spanner behind the band

            """);
    }

    private static string Quoted(string text) => text
        .Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace("\"", "\\\"", StringComparison.Ordinal)
        .ReplaceLineEndings(" ");
}
