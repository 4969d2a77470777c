using System.Globalization;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Reading;

public sealed class CultureTests
{
    [Fact]
    public void A_file_reads_the_same_where_commas_are_decimal_points()
    {
        var text = DesignTexts.Breather.Replace("wall: 2 }", "wall: 1.65 }", StringComparison.Ordinal);

        var (here, there) = (DesignTexts.Good(text), WithCommas(() => DesignTexts.Good(text)));

        Assert.Equal(here.Shell, there.Shell);
        Assert.Equal(here.Ports, there.Ports);
        Assert.Equal(1.65, there.Ports[0].Wall, 1e-12);
    }

    [Fact]
    public void Faults_read_the_same_where_commas_are_decimal_points()
    {
        var text = DesignTexts.WithHeight("1.25", metal: "mild steel");

        var (here, there) = (DesignReader.Read(text).Faults, WithCommas(() => DesignReader.Read(text).Faults));

        Assert.Equal(here.AsEnumerable(), there);
        Assert.Equal("1.25 mm", there[0].Given);
    }

    /// <summary>Globalisation data is left out of the program, so the culture is made by hand.</summary>
    private static T WithCommas<T>(Func<T> read)
    {
        var before = CultureInfo.CurrentCulture;
        var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NumberGroupSeparator = ".";
        commas.NumberFormat.NegativeSign = "\u2212";
        try
        {
            CultureInfo.CurrentCulture = commas;
            return read();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
