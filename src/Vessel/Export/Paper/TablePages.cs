using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>Pages that are filled from above; a table with more rows than there is room for goes on at the top of the next.</summary>
/// <param name="gap">Below a table, mm.</param>
internal sealed class TablePages(Box2 area, double gap)
{
    /// <summary>Height of a heading with the room below it, mm.</summary>
    private const double Heading = 6;

    /// <summary>What stands on each.</summary>
    public List<List<Item>> Pages { get; } = [[]];

    /// <summary>Where the next item goes, mm above the page's lower edge.</summary>
    public double Top { get; private set; } = area.Max.V;

    /// <param name="height">Height that the items take, mm.</param>
    public void Add(IEnumerable<Item> items, double height)
    {
        Pages[^1].AddRange(items);
        Top -= height;
    }

    public void Add(PaperTable table, string? heading = null)
    {
        var above = heading is null ? 0 : Heading;
        for (var done = 0; done < table.Rows.Length;)
        {
            // The header and at least one row.
            var room = (int)Math.Floor((Top - area.Min.V - above) / table.RowHeight) - 1;
            if (room < 1)
            {
                Pages.Add([]);
                Top = area.Max.V;
                continue;
            }

            if (heading is not null)
                Add([Text.Left(done == 0 ? heading : $"{heading}, continued", new(area.Min.U, Top - 4), 3)], above);
            var rows = table.Rows.Skip(done).Take(room).ToList();
            Add(table.Items(new(area.Min.U, Top), area.Width, rows), ((rows.Count + 1) * table.RowHeight) + gap);
            done += rows.Count;
        }
    }
}
