using System.CommandLine;
using System.Globalization;
using System.Text;
using Vessel.Design;
using Vessel.Function;
using Vessel.Starting;
using Vessel.Stock;

namespace Vessel.Cli.Commands;

/// <summary>
/// <c>new</c>: writes a commented first design; asks at a terminal for what the options leave open, or reads it from a pipe.
/// </summary>
internal sealed class NewCommand
{
    private readonly Argument<string?> _file = new("file")
    {
        Description = "The file to write (named after the purpose unless given); never overwritten.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> _purpose = Text("--for", "Purpose; becomes the vessel's name.", "TEXT");

    private readonly Option<string?> _engine = Text("--engine", "Displacement of the engine, L.", "LITRES");

    private readonly Option<string?> _speed = Text("--speed", "Its highest speed, revolutions a minute (3000 unless given).", "RPM");

    private readonly Option<string?> _boost = Text("--boost", "Boost above the air round it, bar (0 unless given).", "BAR");

    private readonly Option<string?> _flow = Text("--flow", "Flow of gas, instead of an engine: L/min, or as '2 cfm'.", "FLOW");

    private readonly Option<string?> _hose = Text(
        "--hose", "Outside diameter of the stubs for the hoses: mm, '1 1/4 in'; chosen unless given.", "SIZE");

    private readonly Option<string?> _diameter = Text("--max-diameter", "Room for the body, side to side (150 mm unless given).", "SIZE");

    private readonly Option<string?> _height = Text("--max-height", "Room in height, stubs included (350 mm unless given).", "SIZE");

    private readonly Option<string?> _material = Text("--material", "Metal (stainless 304 unless given).", "NAME");

    private readonly Option<string?> _mount = Text("--mount", "Way of hanging it: bracket (unless given) or band.", "HOW");

    private readonly Option<string?> _capacity = Text(
        "--capacity", "Oil to hold between drains, L, or the engine's hours between them as '50 h' (0.3 unless given).", "LITRES");

    public static Command Create(CommandConsole console)
    {
        var input = new NewCommand();
        var command = new Command("new", "Write a commented first design, from options, from answers to a few questions, or from the "
            + "answers in a pipe, one a line.")
        {
            input._file, input._purpose, input._engine, input._speed, input._boost, input._flow, input._hose, input._diameter,
            input._height, input._material, input._mount, input._capacity,
        };
        command.SetAction(parsed => input.Run(parsed, console));
        return command;
    }

    private int Run(ParseResult parsed, CommandConsole console)
    {
        StarterWish wish;
        try
        {
            wish = Wish(parsed, new Question(console));
        }
        catch (FormatException problem)
        {
            console.Complain(problem.Message);
            return ExitCodes.Usage;
        }

        var (text, why) = Starter.Write(wish);
        if (text is null)
        {
            console.Complain(why!);
            return ExitCodes.Faults;
        }

        var slug = Slug.Of(wish.Purpose);
        return Save(parsed.GetValue(_file) ?? (slug.Length == 0 ? "vessel" : slug) + ".yaml", text, console);
    }

    private StarterWish Wish(ParseResult parsed, Question question)
    {
        var purpose = question.Ask(parsed.GetValue(_purpose), "What is it for", "Breather separator", "a name", text => text)!;
        var (flow, from) = Flow(parsed, question);
        var hose = question.Ask(
            parsed.GetValue(_hose), "Outside diameter of the hose stubs (Enter: chosen)", null, Sizes(10, 150), Size(10, 150));
        var diameter = question.Ask(parsed.GetValue(_diameter), "Room for the body across", "150 mm", Sizes(40, 2000),
            Size(40, 2000))!.Value;
        var height = question.Ask(parsed.GetValue(_height), "Room over all, upward", "350 mm", Sizes(100, 3000), Size(100, 3000))!.Value;
        var material = question.Ask(parsed.GetValue(_material), "Metal", "stainless 304",
            $"one of {string.Join(", ", Materials.All.Select(metal => metal.Name))}", Materials.Find)!;
        var (litres, capacityFrom) = question.Ask(
            parsed.GetValue(_capacity), "Oil to hold between drains, L (or hours between them, as '50 h')", "0.3",
            "litres from 0 to 100, as '0.5', or hours from 0 to 5000, as '50 h'", Held)!.Value;
        var hasBracket = question.Ask(parsed.GetValue(_mount), "Mounted by a bracket or a band", "bracket", "'bracket' or 'band'",
            Mount)!.Value;
        return new(purpose, flow, from, hose, diameter, height, material, litres, capacityFrom, hasBracket);
    }

    private (double Flow, string From) Flow(ParseResult parsed, Question question)
    {
        if (parsed.GetValue(_flow) is { } given)
            return (question.Ask(given, "Gas to let through", null, "a flow from 0.1 to 100000 L/min, as '60' or '2 cfm'", Gas)!.Value,
                "as you gave it");
        var engine = question.Ask(parsed.GetValue(_engine), "Displacement of the engine, L", "2", Numbers(0.05, 100),
            Number(0.05, 100))!.Value;
        var speed = question.Ask(parsed.GetValue(_speed), "Its highest speed, revolutions a minute", "3000", Numbers(100, 20_000),
            Number(100, 20_000))!.Value;
        var boost = question.Ask(parsed.GetValue(_boost), "Boost, bar (0: none)", "0", Numbers(0, 5), Number(0, 5))!.Value;
        return (BlowBy.Of(engine, speed, boost), FormattableString.Invariant(
            $"guessed for {engine:0.##} L at {speed:0} rpm, {boost:0.##} bar: {BlowBy.Source}"));
    }

    private static int Save(string shown, string text, CommandConsole console)
    {
        try
        {
            using var stream = new FileStream(console.FullPath(shown), FileMode.CreateNew);
            stream.Write(Encoding.UTF8.GetBytes(text));
        }
        catch (IOException) when (Path.Exists(console.FullPath(shown)))
        {
            console.Complain($"'{shown}' is there already; nothing was written. Name another file.");
            return ExitCodes.CouldNotWrite;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            console.Complain($"could not write '{shown}': {e.Message}");
            return ExitCodes.CouldNotWrite;
        }

        console.Output.WriteLine($"{shown} is written. Try: check {shown}");
        return ExitCodes.Good;
    }

    private static double? Gas(string text) => SingleValue.Read(KeyKind.Flow, text) is { } flow and >= 0.1 and <= 100_000 ? flow : null;

    private static (double Litres, string From)? Held(string text)
    {
        if (Number(0, 100)(text) is { } litres)
            return (litres, "as you gave it");
        return text.EndsWith('h') && Number(0, 5000)(text[..^1].TrimEnd()) is { } hours
            ? (OilCarry.Of(hours),
                FormattableString.Invariant($"{hours:0.##} h between drains at {OilCarry.Rate.High:0} g/h: {OilCarry.Source}"))
            : null;
    }

    private static bool? Mount(string text) => text switch
    {
        "bracket" => true,
        "band" => false,
        _ => null,
    };

    private static Func<string, double?> Size(double low, double high) =>
        text => SingleValue.Read(KeyKind.Length, text) is { } size && size >= low && size <= high ? size : null;

    private static string Sizes(double low, double high) =>
        FormattableString.Invariant($"a size from {low} to {high} mm, as '{Math.Max(low, 32)}' or '{(low > 25 ? "6 in" : "1 1/4 in")}'");

    private static string Numbers(double low, double high) =>
        FormattableString.Invariant($"a number from {low} to {high}, with a point and no unit, as '{(low > 10 ? "2800" : "1.5")}'");

    private static Func<string, double?> Number(double low, double high) => text =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value >= low && value <= high
            ? value
            : null;

    private static Option<string?> Text(string name, string description, string help) =>
        new(name) { Description = description, HelpName = help };
}
