namespace Vessel.Export.Dxf;

/// <summary>The edition of the format.</summary>
public enum DxfRelease
{
    /// <summary>AC1015: LWPOLYLINE, handles, units in the header.</summary>
    R2000,

    /// <summary>AC1009, for old controllers: no handles, no units in the header.</summary>
    R12,
}
