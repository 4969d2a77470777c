namespace Vessel.Model;

/// <summary>
/// Which of the tasks that could be done next comes first: long seams first; internals while both ends are open; ports; the closing seam
/// last but for the test and what is put on after it. Common practice, no source.
/// </summary>
public static class WorkRank
{
    public const int Make = 0;
    public const int LongSeam = 10;
    public const int Girth = 15;
    public const int Gores = 20;
    public const int Inside = 30;
    public const int Ports = 40;
    public const int Dress = 45;
    public const int Bracket = 50;
    public const int FirstHead = 60;
    public const int Clean = 70;
    public const int Close = 80;
    public const int Test = 90;
    public const int Finish = 95;

    /// <summary>What is put on the finished vessel.</summary>
    public const int PutOn = 98;
}
