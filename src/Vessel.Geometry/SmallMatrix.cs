namespace Vessel.Geometry;

/// <summary>A dense matrix of a few rows and columns.</summary>
public sealed class SmallMatrix(int rows, int columns)
{
    private readonly double[,] _cells = new double[rows, columns];

    public int Rows { get; } = rows;

    public int Columns { get; } = columns;

    public double this[int row, int column]
    {
        get => _cells[row, column];
        set => _cells[row, column] = value;
    }

    public static SmallMatrix Unit(int size)
    {
        var unit = new SmallMatrix(size, size);
        for (var i = 0; i < size; i++)
            unit[i, i] = 1;
        return unit;
    }

    public static SmallMatrix operator +(SmallMatrix a, SmallMatrix b)
    {
        var sum = new SmallMatrix(a.Rows, a.Columns);
        for (var i = 0; i < a.Rows; i++)
        {
            for (var j = 0; j < a.Columns; j++)
                sum[i, j] = a[i, j] + b[i, j];
        }

        return sum;
    }

    public static SmallMatrix operator *(SmallMatrix a, SmallMatrix b)
    {
        var product = new SmallMatrix(a.Rows, b.Columns);
        for (var i = 0; i < a.Rows; i++)
        {
            for (var j = 0; j < b.Columns; j++)
            {
                for (var k = 0; k < a.Columns; k++)
                    product[i, j] += a[i, k] * b[k, j];
            }
        }

        return product;
    }

    public SmallMatrix Transposed()
    {
        var turned = new SmallMatrix(Columns, Rows);
        for (var i = 0; i < Rows; i++)
        {
            for (var j = 0; j < Columns; j++)
                turned[j, i] = this[i, j];
        }

        return turned;
    }

    /// <summary>Inverse by Gauss and Jordan with the greatest pivot of each column; endless or no numbers where there is none.</summary>
    public SmallMatrix Inverse()
    {
        var (left, right) = (new SmallMatrix(Rows, Rows) + this, Unit(Rows));
        for (var column = 0; column < Rows; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < Rows; row++)
            {
                if (Math.Abs(left[row, column]) > Math.Abs(left[pivot, column]))
                    pivot = row;
            }

            left.Swap(pivot, column);
            right.Swap(pivot, column);
            var scale = 1 / left[column, column];
            left.Scale(column, scale);
            right.Scale(column, scale);
            for (var row = 0; row < Rows; row++)
            {
                var share = left[row, column];
                if (row == column || share == 0)
                    continue;
                left.Take(row, column, share);
                right.Take(row, column, share);
            }
        }

        return right;
    }

    private void Swap(int a, int b)
    {
        for (var j = 0; j < Columns; j++)
            (this[a, j], this[b, j]) = (this[b, j], this[a, j]);
    }

    private void Scale(int row, double factor)
    {
        for (var j = 0; j < Columns; j++)
            this[row, j] *= factor;
    }

    private void Take(int row, int other, double share)
    {
        for (var j = 0; j < Columns; j++)
            this[row, j] -= share * this[other, j];
    }
}
