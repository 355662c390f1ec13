package leadlight.archive;

import static org.apache.spark.sql.types.DataTypes.BooleanType;
import static org.apache.spark.sql.types.DataTypes.DoubleType;
import static org.apache.spark.sql.types.DataTypes.IntegerType;
import static org.apache.spark.sql.types.DataTypes.StringType;
import static org.apache.spark.sql.types.DataTypes.createArrayType;
import static org.apache.spark.sql.types.DataTypes.createMapType;

import org.apache.spark.sql.types.StructType;

/**
 * The columns of the archive: one row a photo, its joints within it, so that it is whole or absent.
 */
final class ArchiveRows {

  static final StructType FINDING =
      new StructType().add("kind", StringType).add("probability", DoubleType);

  static final StructType JOINT =
      new StructType()
          .add("pin", IntegerType)
          .add("name", StringType)
          .add("verdict", StringType)
          .add("findings", createArrayType(FINDING))
          .add("doubts", createArrayType(StringType))
          .add("by_measures", createMapType(StringType, DoubleType))
          .add("by_reader", createMapType(StringType, DoubleType))
          .add("json", StringType);

  static final StructType PHOTO =
      new StructType()
          .add("asked", StringType)
          .add("photo", StringType)
          .add("site", StringType)
          .add("lamp", StringType)
          .add("connector", StringType)
          .add("class", IntegerType)
          .add("limits", StringType)
          .add("sha256", StringType)
          .add("outcome", StringType)
          .add("message", StringType)
          .add("row_found", BooleanType)
          .add("verdict", StringType)
          .add("joints", createArrayType(JOINT))
          .add("version", StringType);

  private ArchiveRows() {}
}
