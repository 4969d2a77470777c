using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>The shop that will make the vessel: its stock, tools and rates. What its file leaves out is a default.</summary>
/// <param name="Name">Empty where the file gives none.</param>
/// <param name="Rates">Rates of handwork, by the names of <see cref="HandRates"/>.</param>
/// <param name="BendLines">K by metal, as a share of the thickness from the inside.</param>
/// <param name="Figures">Every figure in use with its source, in the order of the table of keys.</param>
public sealed record Shop(
    string Name,
    WeldingShop Welding,
    TorchShop Torch,
    StockShop Stock,
    PricesShop Prices,
    ImmutableDictionary<string, Estimate> Rates,
    ImmutableDictionary<MaterialFamily, double> BendLines,
    ImmutableArray<ShopFigure> Figures)
{
    public RollsShop Rolls { get; init; } = RollsShop.Unknown;

    private static readonly Lazy<Shop> _usual = new(() => ShopReader.Read("{}").Value!);

    /// <summary>No file: every figure is its default.</summary>
    public static Shop Usual => _usual.Value;
}

/// <summary>Stock that is bought, and the allowances for cutting it; mm.</summary>
public sealed record StockShop(
    double TubeLength,
    double BarLength,
    double SawKerf,
    double GripLoss,
    double SheetLength,
    double SheetWidth,
    double SheetMargin,
    double Spacing)
{
    /// <summary>Step to whole multiples of which tube, bar and the rectangle of a sheet are cut off for sale, upward; 0 for none.</summary>
    public double CutStep { get; init; }

    /// <summary>Shortest piece of tube or bar that is sold.</summary>
    public double LeastCut { get; init; }

    /// <summary>What is bought where so much is needed, mm: rounded up, never less than is sold.</summary>
    /// <param name="most">Greatest size, that of the whole length or side.</param>
    public double Bought(double needed, double most, double least = 0)
    {
        var stepped = CutStep > 0 ? CutStep * Math.Ceiling((needed / CutStep) - 1e-9) : needed;
        return Math.Min(Math.Max(stepped, least), Math.Max(needed, most));
    }
}

/// <param name="CupDiameter">Outside, mm.</param>
/// <param name="StickOut">Distance from the cup's edge to the root, mm.</param>
public sealed record TorchShop(double CupDiameter, double StickOut);

/// <param name="RodLength">mm.</param>
/// <param name="RodStub">Stub of each rod that is thrown away, mm.</param>
/// <param name="GapAim">Root opening to aim for, as a share of the wall.</param>
/// <param name="GapMost">Greatest gap, beyond which it is refused, as a share of the wall.</param>
/// <param name="GapLimit">Greatest gap, beyond which it is refused on any wall, mm.</param>
/// <param name="FaceAllowance">Left on a bung's sealing face, mm.</param>
/// <param name="PurgeFlow">L/min.</param>
/// <param name="PurgeOxygen">ppm that may be left.</param>
/// <param name="ArcShare">Arc time as a share of elapsed time.</param>
public sealed record WeldingShop(
    double RodLength,
    double RodStub,
    double GapAim,
    double GapMost,
    double GapLimit,
    double FaceAllowance,
    double PurgeFlow,
    double PurgeOxygen,
    Estimate ArcShare)
{
    public double StubShare => RodStub / RodLength;
}

/// <summary>One figure of the shop as it is shown.</summary>
/// <param name="Path">Path in the shop file: <c>welding.rod_stub</c>.</param>
/// <param name="Value">Value with its unit.</param>
/// <param name="Source">Source of a default; else that the shop file gives it.</param>
public sealed record ShopFigure(string Path, string Value, string Source);
