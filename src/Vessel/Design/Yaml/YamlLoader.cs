using System.Collections.Immutable;
using System.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using Mark = YamlDotNet.Core.Mark;

namespace Vessel.Design;

/// <summary>
/// Reads the one document of a file into a tree with places. Takes less than YAML allows: no anchors, aliases, tags or
/// merge keys, keys are plain words, and the file has caps, so that no file can exhaust the machine.
/// </summary>
internal sealed class YamlLoader
{
    private readonly string _text;

    private readonly Parser _parser;

    private readonly List<Fault> _faults = [];

    private int _nodes;

    private YamlLoader(string text)
    {
        _text = text;
        _parser = new Parser(new StringReader(text));
    }

    /// <summary>
    /// The mapping at the top and what is wrong in the file. After a duplicate key reading goes on with the first of
    /// the two; every other fault leaves no tree.
    /// </summary>
    public static LoadedFile Load(string text)
    {
        if (Encoding.UTF8.GetByteCount(text) > Limits.FileBytes)
        {
            return Refusal(new Fault(FaultCodes.FileTooLarge, "", "The file is larger than a vessel file can be.",
                $"{Encoding.UTF8.GetByteCount(text)} bytes", $"{Limits.FileBytes} bytes", "Keep one vessel in one file.", Start));
        }

        return new YamlLoader(text.TrimStart('\uFEFF')).Document();
    }

    private static Span Start => new(1, 1, 1, 1);

    private static LoadedFile Refusal(params ImmutableArray<Fault> faults) => new(null, faults);

    private LoadedFile Document()
    {
        YamlNode? top = null;
        var read = false;
        try
        {
            Next();
            while (Next() is not StreamEnd)
            {
                if (top is not null)
                {
                    throw Stop(FaultCodes.SecondDocument, Here(), "The file holds a second document after '---'.",
                        "Keep one vessel in one file; delete the line '---' or the lines after it.");
                }

                Next();
                top = Node(1);
                Next();
            }

            read = true;
        }
        catch (Refused refused)
        {
            _faults.Add(refused.Fault);
        }
        catch (YamlException e)
        {
            _faults.Add(Syntax(e.Message, TabAfterLastEvent(e) ?? Place(e.Start, e.Start)));
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException)
        {
            // Thrown without a place, as for a brace that is never closed: the last event's end is the nearest.
            var end = _parser.Current?.End ?? Mark.Empty;
            _faults.Add(Syntax("a brace, bracket or quote is not closed after this place", Place(end, end)));
        }

        if (!read)
            return Refusal([.. _faults]);
        return top switch
        {
            YamlMapping mapping => new LoadedFile(mapping, [.. _faults]),
            null or YamlScalar { Text: "", IsQuoted: false } => Refusal(new Fault(FaultCodes.FileEmpty, "",
                "The file holds no vessel.", null, null, "Begin with 'vessel: <name>'.", Start)),
            _ => Refusal(new Fault(FaultCodes.WrongKind, "", "The file is not a list of keys with values.", null, null,
                "Begin with 'vessel: <name>'.", top.At)),
        };
    }

    /// <summary>The library complains of a tab at the start of the file; where it stands is looked up here.</summary>
    private Span? TabAfterLastEvent(YamlException e)
    {
        if (!e.Message.Contains("tab as indentation", StringComparison.Ordinal))
            return null;
        var lines = _text.Split('\n');
        for (var i = (int)Math.Max(1, _parser.Current?.End.Line ?? 1) - 1; i < lines.Length; i++)
        {
            var tab = lines[i].IndexOf('\t', StringComparison.Ordinal);
            if (tab >= 0 && string.IsNullOrWhiteSpace(lines[i][..tab]))
                return new Span(i + 1, tab + 1, i + 1, tab + 1);
        }

        return null;
    }

    private static Fault Syntax(string message, Span at) => new(FaultCodes.YamlSyntax, "",
        $"The file is not well-formed YAML: {char.ToLowerInvariant(message[0])}{message[1..].TrimEnd('.')}.", null, null,
        "Check indentation (blanks, no tabs), colons, quotes and brackets at this place.", at);

    private ParsingEvent Next()
    {
        if (!_parser.MoveNext())
            throw new InvalidOperationException("the file ends too early");
        return _parser.Current!;
    }

    /// <summary>The node that begins at the current event; leaves the parser on its last event.</summary>
    private YamlNode Node(int depth)
    {
        if (++_nodes > Limits.Values)
        {
            throw Stop(FaultCodes.TooManyValues, Here(), "The file holds more values than a vessel file can.",
                "Keep one vessel in one file.", $"{Limits.Values}");
        }

        if (depth > Limits.Nesting)
        {
            throw Stop(FaultCodes.NestingTooDeep, Here(), "Mappings or lists are nested too deeply.",
                "No key of a vessel file lies deeper than five levels.", $"{Limits.Nesting} levels");
        }

        Plain();
        return _parser.Current switch
        {
            Scalar scalar => Leaf(scalar),
            MappingStart start => Mapping(start, depth),
            SequenceStart start => List(start, depth),
            var other => throw new InvalidOperationException($"unexpected {other?.GetType().Name}"),
        };
    }

    private void Plain()
    {
        if (_parser.Current is AnchorAlias)
        {
            throw Stop(FaultCodes.AnchorOrTag, Here(), "Aliases (*name) are not taken.",
                "Write the value out, or name it under 'dimensions'.");
        }

        if (_parser.Current is NodeEvent { Anchor.IsEmpty: false })
        {
            throw Stop(FaultCodes.AnchorOrTag, Here(), "Anchors (&name) are not taken.",
                "Write the value out, or name it under 'dimensions'.");
        }

        if (_parser.Current is NodeEvent { Tag.IsEmpty: false })
            throw Stop(FaultCodes.AnchorOrTag, Here(), "Tags (!name) are not taken.", "Delete the tag.");
    }

    private YamlScalar Leaf(Scalar scalar)
    {
        var leaf = AsWritten(scalar);
        if (TextCheck.Of(leaf) is not { } fault)
            return leaf;
        _faults.Add(fault);
        // What follows is looked at as if the text were fit, so that nothing else is said about it.
        return leaf with { Text = PlainText.Clean(leaf.Text[..Math.Min(leaf.Text.Length, Limits.NameLength)]), TextColumn = null };
    }

    private static YamlScalar AsWritten(Scalar scalar)
    {
        var at = Place(scalar.Start, scalar.End);
        var quoted = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        var shift = quoted ? 1 : 0;
        var block = scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded;
        var verbatim = at.Line == at.EndLine && at.EndColumn - at.Column + 1 == scalar.Value.Length + (2 * shift) && !block;
        // A block of several lines is one line of text: no value of a vessel file has more.
        var text = block ? scalar.Value.TrimEnd('\n').Replace('\n', ' ') : scalar.Value;
        return new YamlScalar(text, quoted, verbatim ? at.Column + shift : null, at);
    }

    private YamlMapping Mapping(MappingStart start, int depth)
    {
        var entries = ImmutableArray.CreateBuilder<YamlEntry>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (Next() is not MappingEnd)
        {
            var key = Key();
            Next();
            var value = Node(depth + 1);
            if (seen.Add(key.Text))
            {
                entries.Add(new YamlEntry(key.Text, key.At, value));
                continue;
            }

            _faults.Add(new Fault(FaultCodes.DuplicateKey, "", $"The key '{key.Text}' stands here a second time.",
                null, null, "Delete one of the two.", key.At));
        }

        return new YamlMapping(entries.ToImmutable(), Whole(start, entries.Count == 0 ? null : entries[^1].Value));
    }

    private YamlScalar Key()
    {
        Plain();
        if (_parser.Current is not Scalar scalar)
        {
            throw Stop(FaultCodes.KeyNotAWord, Here(), "A key is a list or mapping.",
                "Write 'key: value' with a word as the key.");
        }

        var key = Leaf(scalar);
        if (key is { Text: "<<", IsQuoted: false })
        {
            throw Stop(FaultCodes.AnchorOrTag, key.At, "Merge keys (<<) are not taken.",
                "Write the keys out, or name values under 'dimensions'.");
        }

        return key;
    }

    private YamlList List(SequenceStart start, int depth)
    {
        var items = ImmutableArray.CreateBuilder<YamlNode>();
        while (Next() is not SequenceEnd)
            items.Add(Node(depth + 1));
        return new YamlList(items.ToImmutable(), Whole(start, items.Count == 0 ? null : items[^1]));
    }

    /// <summary>A block's own end mark lies at the next token, so its last value ends it.</summary>
    private Span Whole(ParsingEvent start, YamlNode? last)
    {
        var flow = start is MappingStart { Style: MappingStyle.Flow } or SequenceStart { Style: SequenceStyle.Flow };
        var first = Place(start.Start, start.Start);
        // The mark of a closing brace is the brace itself, both as start and as end.
        var brace = _parser.Current!.Start;
        if (flow || last is null)
            return first with { EndLine = (int)brace.Line, EndColumn = (int)brace.Column };
        return first with { EndLine = last.At.EndLine, EndColumn = last.At.EndColumn };
    }

    private Span Here() => Place(_parser.Current!.Start, _parser.Current.End);

    private static Span Place(Mark start, Mark end)
    {
        var first = ((int)Math.Max(1, start.Line), (int)Math.Max(1, start.Column));
        var last = ((int)end.Line, (int)end.Column - 1);
        // An empty value has no last character: it stands where it would begin.
        return last.CompareTo(first) < 0
            ? new Span(first.Item1, first.Item2, first.Item1, first.Item2)
            : new Span(first.Item1, first.Item2, last.Item1, Math.Max(1, last.Item2));
    }

    private static Refused Stop(string code, Span at, string what, string remedy, string? limit = null) =>
        new(new Fault(code, "", what, null, limit, remedy, at));

    /// <summary>Ends the reading of a file that goes beyond what is taken.</summary>
    private sealed class Refused(Fault fault) : Exception
    {
        public Fault Fault { get; } = fault;
    }
}

internal sealed record LoadedFile(YamlMapping? Top, ImmutableArray<Fault> Faults);
